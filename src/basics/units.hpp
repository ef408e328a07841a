// Physical quantities checked by the compiler. A Quantity holds its number in SI (metre, kilogram, second, ampere,
// kelvin, radian) and money in the major unit of the file's currency; its type holds the dimension. Temperatures count
// kelvins above 0 °C, so that degrees Celsius are a unit without offset, in a cell as here.
// The number type is `double` for plain arithmetic or `Traced` (trace/traced.hpp) for arithmetic that records itself.
#pragma once

#include <cstdint>

namespace seambook {

/// Exponents of the base dimensions. Angle is kept apart so that degrees cannot pass for a ratio.
struct Dim {
  std::int8_t length = 0, mass = 0, time = 0, current = 0, temperature = 0, money = 0, angle = 0;
  friend constexpr bool operator==(const Dim&, const Dim&) = default;
};

constexpr Dim operator+(Dim a, Dim b) {
  const auto plus = [](int x, int y) { return static_cast<std::int8_t>(x + y); };
  return {plus(a.length, b.length),           plus(a.mass, b.mass),   plus(a.time, b.time),  plus(a.current, b.current),
          plus(a.temperature, b.temperature), plus(a.money, b.money), plus(a.angle, b.angle)};
}
constexpr Dim operator-(Dim a) {
  const auto minus = [](int x) { return static_cast<std::int8_t>(-x); };
  return {minus(a.length),      minus(a.mass),  minus(a.time), minus(a.current),
          minus(a.temperature), minus(a.money), minus(a.angle)};
}
constexpr Dim operator-(Dim a, Dim b) { return a + (-b); }

namespace dim {
inline constexpr Dim ratio{};
inline constexpr Dim length{.length = 1};
inline constexpr Dim area{.length = 2};
inline constexpr Dim volume{.length = 3};
inline constexpr Dim mass{.mass = 1};
inline constexpr Dim time{.time = 1};
inline constexpr Dim current{.current = 1};
inline constexpr Dim temperature{.temperature = 1};
inline constexpr Dim money{.money = 1};
inline constexpr Dim angle{.angle = 1};
inline constexpr Dim speed = length - time;
inline constexpr Dim density = mass - volume;
inline constexpr Dim linear_mass = mass - length;
inline constexpr Dim mass_rate = mass - time;
inline constexpr Dim flow = volume - time;
inline constexpr Dim energy{.length = 2, .mass = 1, .time = -2};
inline constexpr Dim power = energy - time;
inline constexpr Dim voltage = power - current;
inline constexpr Dim line_energy = energy - length;
inline constexpr Dim energy_per_volume = energy - volume;
inline constexpr Dim volume_per_mass = volume - mass;  // hydrogen in weld metal
inline constexpr Dim pace = time - length;             // minutes per metre of seam
inline constexpr Dim time_per_mass = time - mass;
inline constexpr Dim money_per_time = money - time;
inline constexpr Dim money_per_mass = money - mass;
inline constexpr Dim money_per_volume = money - volume;
inline constexpr Dim money_per_energy = money - energy;
inline constexpr Dim money_per_length = money - length;
inline constexpr Dim specific_heat = energy - mass - temperature;
}  // namespace dim

template <Dim D, class N = double>
struct Quantity {
  static constexpr Dim dimension = D;
  N si{};
  friend constexpr bool operator==(const Quantity&, const Quantity&) = default;
};

template <class N = double>
using Ratio = Quantity<dim::ratio, N>;
template <class N = double>
using Length = Quantity<dim::length, N>;
template <class N = double>
using Area = Quantity<dim::area, N>;
template <class N = double>
using Volume = Quantity<dim::volume, N>;
template <class N = double>
using Mass = Quantity<dim::mass, N>;
template <class N = double>
using Time = Quantity<dim::time, N>;
template <class N = double>
using Current = Quantity<dim::current, N>;
template <class N = double>
using Voltage = Quantity<dim::voltage, N>;
template <class N = double>
using Temperature = Quantity<dim::temperature, N>;
template <class N = double>
using Money = Quantity<dim::money, N>;
template <class N = double>
using Angle = Quantity<dim::angle, N>;
template <class N = double>
using Speed = Quantity<dim::speed, N>;
template <class N = double>
using Density = Quantity<dim::density, N>;
template <class N = double>
using LinearMass = Quantity<dim::linear_mass, N>;
template <class N = double>
using MassRate = Quantity<dim::mass_rate, N>;
template <class N = double>
using Flow = Quantity<dim::flow, N>;
template <class N = double>
using Energy = Quantity<dim::energy, N>;
template <class N = double>
using Power = Quantity<dim::power, N>;
template <class N = double>
using LineEnergy = Quantity<dim::line_energy, N>;
template <class N = double>
using EnergyPerVolume = Quantity<dim::energy_per_volume, N>;
template <class N = double>
using VolumePerMass = Quantity<dim::volume_per_mass, N>;
template <class N = double>
using Pace = Quantity<dim::pace, N>;
template <class N = double>
using TimePerMass = Quantity<dim::time_per_mass, N>;
template <class N = double>
using MoneyPerTime = Quantity<dim::money_per_time, N>;
template <class N = double>
using MoneyPerMass = Quantity<dim::money_per_mass, N>;
template <class N = double>
using MoneyPerVolume = Quantity<dim::money_per_volume, N>;
template <class N = double>
using MoneyPerEnergy = Quantity<dim::money_per_energy, N>;
template <class N = double>
using MoneyPerLength = Quantity<dim::money_per_length, N>;

template <class N = double>
using SpecificHeat = Quantity<dim::specific_heat, N>;

template <Dim D, class N>
Quantity<D, N> operator+(Quantity<D, N> a, Quantity<D, N> b) {
  return {a.si + b.si};
}
template <Dim D, class N>
Quantity<D, N> operator-(Quantity<D, N> a, Quantity<D, N> b) {
  return {a.si - b.si};
}
template <Dim A, Dim B, class N>
Quantity<A + B, N> operator*(Quantity<A, N> a, Quantity<B, N> b) {
  return {a.si * b.si};
}
template <Dim A, Dim B, class N>
Quantity<A - B, N> operator/(Quantity<A, N> a, Quantity<B, N> b) {
  return {a.si / b.si};
}
/// Plain numbers scale; they never add.
template <Dim D, class N>
Quantity<D, N> operator*(double k, Quantity<D, N> a) {
  return {N(k) * a.si};
}
template <Dim D, class N>
Quantity<D, N> operator*(Quantity<D, N> a, double k) {
  return {a.si * N(k)};
}
template <Dim D, class N>
Quantity<D, N> operator/(Quantity<D, N> a, double k) {
  return {a.si / N(k)};
}
template <Dim D>
constexpr bool operator<(Quantity<D> a, Quantity<D> b) {
  return a.si < b.si;
}
template <Dim D>
constexpr bool operator>(Quantity<D> a, Quantity<D> b) {
  return a.si > b.si;
}
template <Dim D>
constexpr bool operator<=(Quantity<D> a, Quantity<D> b) {
  return a.si <= b.si;
}
template <Dim D>
constexpr bool operator>=(Quantity<D> a, Quantity<D> b) {
  return a.si >= b.si;
}
/// A plain number as a ratio, for example `number<N>(1)`.
template <class N>
Ratio<N> number(double value) {
  return {N(value)};
}
template <class N, Dim D>
Quantity<D, N> constant(Quantity<D> q) {
  return {N(q.si)};
}

/// The unit a figure is shown in: `si` is the size of one unit in SI, `zero` the number shown for nothing (32 in
/// degrees Fahrenheit, for temperatures only). Money units carry "¤" for the currency code.
struct Unit {
  const char* word = "";
  double si = 1;
  double zero = 0;
};
/// The number that is shown for a value in SI.
constexpr double shown_number(double si, const Unit& unit) { return si / unit.si + unit.zero; }

namespace unit {
inline constexpr Unit none{"", 1};
inline constexpr Unit percent{"%", 0.01};
inline constexpr Unit mm{"mm", 1e-3};
inline constexpr Unit m{"m", 1};
inline constexpr Unit mm2{"mm²", 1e-6};
inline constexpr Unit degree{"°", 3.14159265358979323846 / 180};
inline constexpr Unit g{"g", 1e-3};
inline constexpr Unit kg{"kg", 1};
inline constexpr Unit g_per_m{"g/m", 1e-3};
inline constexpr Unit g_per_cm3{"g/cm³", 1e3};
inline constexpr Unit s{"s", 1};
inline constexpr Unit min{"min", 60};
inline constexpr Unit h{"h", 3600};
inline constexpr Unit mm_per_min{"mm/min", 1e-3 / 60};
inline constexpr Unit m_per_min{"m/min", 1.0 / 60};
inline constexpr Unit cm3_per_min{"cm³/min", 1e-6 / 60};
inline constexpr Unit kg_per_h{"kg/h", 1.0 / 3600};
inline constexpr Unit l{"L", 1e-3};
inline constexpr Unit m3{"m³", 1};
inline constexpr Unit l_per_min{"L/min", 1e-3 / 60};
inline constexpr Unit celsius{"°C", 1};
inline constexpr Unit J_per_kgK{"J/kgK", 1};
inline constexpr Unit A{"A", 1};
inline constexpr Unit V{"V", 1};
inline constexpr Unit W{"W", 1};
inline constexpr Unit kW{"kW", 1e3};
inline constexpr Unit kWh{"kWh", 3.6e6};
inline constexpr Unit kJ_per_mm{"kJ/mm", 1e6};
inline constexpr Unit J_per_mm3{"J/mm³", 1e9};
inline constexpr Unit ml_per_100g{"ml/100 g", 1e-5};
inline constexpr Unit min_per_m{"min/m", 60};
inline constexpr Unit min_per_kg{"min/kg", 60};
inline constexpr Unit money{"¤", 1};
inline constexpr Unit money_per_h{"¤/h", 1.0 / 3600};
inline constexpr Unit money_per_kg{"¤/kg", 1};
inline constexpr Unit money_per_m3{"¤/m³", 1};
inline constexpr Unit money_per_kWh{"¤/kWh", 1 / 3.6e6};
inline constexpr Unit money_per_m{"¤/m", 1};
}  // namespace unit

}  // namespace seambook
