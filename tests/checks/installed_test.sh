#!/usr/bin/env bash
# installed_test.sh SEAMBOOK ROOT: what `cmake --install` puts there, used as somebody would who has nothing else: the rate
# book and the examples are found, manual pages are sound, completion completes.
set -euo pipefail
program=$1
build=$(dirname "$program")
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
prefix=$scratch/prefix
cmake --install "$build" --prefix "$prefix" >"$scratch/install.log"
export PATH=$prefix/bin:$PATH HOME=$scratch/home MANROFFSEQ='' LC_ALL=C.UTF-8
mkdir -p "$HOME" "$scratch/away"
cd "$scratch/away"

fail() {
  echo "FAULT: $1" >&2
  exit 1
}

# The rate book: the installed one where no other is nearer, from any folder; then the user's; then one beside the job.
cp "$prefix/share/seambook/jobs/bracket.yaml" .
said=$(seambook check bracket.yaml 2>&1)
[[ $said == *"rate book $prefix/share/seambook/rates "* ]] || fail "the installed rate book was not found: $said"
mkdir -p "$HOME/.config/seambook"
cp -r "$prefix/share/seambook/rates" "$HOME/.config/seambook/rates"
said=$(seambook check bracket.yaml 2>&1)
[[ $said == *"$HOME/.config/seambook/rates "* ]] || fail "the user's rate book was not preferred: $said"
cp -r "$prefix/share/seambook/rates" rates
said=$(seambook check bracket.yaml 2>&1)
[[ $said == *"rate book rates "* ]] || fail "the rate book beside the job was not preferred: $said"

# The demo, from the installed examples.
seambook quote "$prefix"/share/seambook/jobs/bracket.yaml --out out --quiet
[[ -s out/bracket-quote.xlsx ]] || fail "no workbook was written"
(cd "$prefix/share/seambook" && seambook check jobs/*.yaml jobs/*/*.yaml --quiet >"$scratch/checked")
[[ $(wc -l <"$scratch/checked") -ge 12 ]] || fail "the installed examples are not all good: $(cat "$scratch/checked")"

# A page for each command and one for the program; no complaint of the formatter, every option in it.
for command in $(seambook --help | sed -nE '/^Subcommands:/,/^$/s/^  ([a-z]+) .*/\1/p') ''; do
  page=$prefix/share/man/man1/seambook${command:+-$command}.1.gz
  [[ -s $page ]] || fail "$page is missing"
  zcat "$page" >"$scratch/page"
  complaints=$(groff -man -Tutf8 -ww -z "$scratch/page" 2>&1)
  [[ -z $complaints ]] || fail "$page: $complaints"
  text=$(groff -man -Tutf8 -P-cbou "$scratch/page" | tr '\n' ' ')
  [[ $text == *NAME*SYNOPSIS*DESCRIPTION*EXAMPLES*"EXIT STATUS"*"SEE ALSO"* ]] || fail "$page lacks a section"
  [[ -z $command ]] || for option in $(seambook "$command" --help | grep -oE -- '--[a-z-]+' | sort -u); do
    [[ $option == --help || $text == *"${option//-/[-‐−]}"* || $text == *$option* ]] || fail "$page does not know $option"
  done
done

# Completion: commands, options of a command, words of an option, files.
complete_to() {
  bash -euc '
    source "$1"; shift
    compopt() { :; }  # stands in for what only a completion under way may call
    COMP_WORDS=("$@") COMP_CWORD=$(($# - 1)) COMPREPLY=()
    _seambook
    printf "%s\n" "${COMPREPLY[@]}" | sort | paste -sd" "' complete "$prefix/share/bash-completion/completions/seambook" "$@"
}
expect() {
  local wanted=$1
  shift
  local given
  given=$(complete_to "$@")
  [[ $given == "$wanted" ]] || fail "completion of '$*' is '$given', not '$wanted'"
}
expect "completion" seambook compl
expect "--rates" seambook check --ra
expect "always auto never" seambook quote --color ""
expect "bracket.yaml" seambook quote br
expect "bash zsh" seambook completion ""
expect "quote" seambook manual qu
if command -v zsh >/dev/null; then
  zsh -n "$prefix/share/zsh/vendor-completions/_seambook" || fail "the completion for zsh is no zsh"
fi
echo "installed, found, quoted, described, completed"
