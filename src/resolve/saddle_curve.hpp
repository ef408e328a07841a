// The line along which a tube set on a larger tube is welded: the curve in which two cylinders whose axes meet
// intersect. No closed formula gives its length, so it is summed numerically and stands as a locked value.
// Source: plane and solid geometry.
#pragma once

#include "basics/units.hpp"

namespace seambook {

/// Length of the curve for a branch no larger than the header, both outside diameters, the angle between the axes more
/// than 0 and less than 180 degrees. Exact to about 1e-9.
Length<> saddle_curve(Length<> branch_diameter, Length<> header_diameter, Angle<> branch_angle);

}  // namespace seambook
