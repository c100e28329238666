using Chandlery.Core.Quantities;

namespace Chandlery.Core.Declared;

/// <summary>What the maker reckons prices by. None of them is checked against any tax law.</summary>
/// <param name="Currency">Three letters, such as EUR (ISO 4217): what all amounts are in.</param>
/// <param name="PerHour">What an hour of work costs; null when work is not reckoned.</param>
/// <param name="MarginPercent">Margin, percent of the price before tax; null when no price is asked for.</param>
/// <param name="TaxPercent">Tax on the price, percent; null for none.</param>
public sealed record Rates(string Currency, Money? PerHour, double? MarginPercent, double? TaxPercent);
