using System.Numerics;

namespace Chandlery.Core.Notified;

/// <summary>How the format stores the VAT numbers of a country.</summary>
/// <param name="Code">Country code.</param>
/// <param name="Group">Country group.</param>
/// <param name="CountryBits">Bits of the number within the group.</param>
/// <param name="Number">Number within the group.</param>
/// <param name="Form">The VAT number's form, in words.</param>
/// <param name="Value">VAT number to value; null when it has not the form.</param>
internal sealed record UfiCountry(string Code, int Group, int CountryBits, int Number, string Form, Func<string, BigInteger?> Value);
