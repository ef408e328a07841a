#include "resolve/currency.hpp"

namespace seambook {
namespace {

// ISO 4217, list of active national currencies; funds, metals and test codes left out.
constexpr std::string_view two_digit_codes =
    "AED AFN ALL AMD ANG AOA ARS AUD AWG AZN BAM BBD BDT BGN BMD BND BOB BRL BSD BTN BWP BYN BZD CAD CDF CHF CNY COP "
    "CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR "
    "JMD KES KGS KHR KPW KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MYR MZN NAD NGN "
    "NIO NOK NPR NZD PAB PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP "
    "SZL THB TJS TMT TOP TRY TTD TWD TZS UAH USD UYU UZS VES WST XCD YER ZAR ZMW";
constexpr std::string_view no_digit_codes = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX VND VUV XAF XOF XPF";
constexpr std::string_view three_digit_codes = "BHD IQD JOD KWD LYD OMR TND";

bool holds_code(std::string_view codes, std::string_view code) {
  const std::size_t at = codes.find(code);
  return code.size() == 3 && at != codes.npos && at % 4 == 0;
}

}  // namespace

std::optional<int> minor_digits_of(std::string_view currency) {
  if (holds_code(two_digit_codes, currency)) return 2;
  if (holds_code(no_digit_codes, currency)) return 0;
  if (holds_code(three_digit_codes, currency)) return 3;
  return std::nullopt;
}

}  // namespace seambook
