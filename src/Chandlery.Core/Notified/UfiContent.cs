using System.Numerics;

namespace Chandlery.Core.Notified;

/// <summary>What a UFI is made of.</summary>
/// <param name="Country">Country code of the VAT number; "KEY" for a company key.</param>
/// <param name="VatValue">The VAT number as a number.</param>
/// <param name="FormulationNumber">Formulation number.</param>
public sealed record UfiContent(string Country, BigInteger VatValue, long FormulationNumber);
