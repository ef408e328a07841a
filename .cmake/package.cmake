# What is installed: the program, the rate book and example jobs with their schemas, manual pages, completion. As a Debian
# package: `cpack --config build/release/CPackConfig.cmake`.
install(TARGETS seambook)
install(DIRECTORY rates jobs DESTINATION ${CMAKE_INSTALL_DATADIR}/seambook PATTERN pictures EXCLUDE)
install(FILES README.md CHANGELOG.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR} RENAME copyright)

# The program writes its own pages and completion, from what its command line knows.
set(SEAMBOOK_PAGES ${CMAKE_BINARY_DIR}/pages)
install(CODE "execute_process(COMMAND \"${CMAKE_COMMAND}\" -DPROGRAM=$<TARGET_FILE:seambook> -DOUT=${SEAMBOOK_PAGES}
  -P \"${CMAKE_SOURCE_DIR}/.cmake/pages.cmake\" COMMAND_ERROR_IS_FATAL ANY)")
install(DIRECTORY ${SEAMBOOK_PAGES}/man1 DESTINATION ${CMAKE_INSTALL_MANDIR})
install(FILES ${SEAMBOOK_PAGES}/seambook DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)
install(FILES ${SEAMBOOK_PAGES}/_seambook DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions)

set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME seambook)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_MAINTAINER "the maintainers of seambook <maintainers@seambook.invalid>")
set(CPACK_DEBIAN_PACKAGE_SECTION science)
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION "Reads jobs of weld joints and the shop's rate book, both plain YAML, and works
out what every weld takes. Writes quotes, plans and comparisons as
spreadsheets, and shows where each figure comes from.")
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON) # asks dpkg-shlibdeps of dpkg-dev
include(CPack)
