// Which station may do what, and what a laser station still lacks before a beam may be switched on there.
#pragma once

#include "resolve/job.hpp"

namespace seambook {

/// Whether the station has the process and takes the joint's base metal.
bool station_takes(const RateBook&, const Station&, const Joint&, std::size_t process);
/// What the rate book does not state ready at a station for work with a laser: `no safety officer, no rated eyewear`;
/// empty when all is.
std::string laser_lacks(const Station&);
/// Whether the procedure welds with a laser.
bool by_laser(const Procedure&);

}  // namespace seambook
