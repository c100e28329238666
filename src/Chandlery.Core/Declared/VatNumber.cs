namespace Chandlery.Core.Declared;

/// <summary>A VAT number as declared; whether it has its country's form is seen when a UFI is made with it.</summary>
/// <param name="Country">Country code.</param>
/// <param name="Number">The number without the country code.</param>
public sealed record VatNumber(string Country, string Number);
