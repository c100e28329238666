namespace Chandlery.Tests.SecondCalculation;

/// <summary>A specific concentration limit as a supplier gives it.</summary>
/// <param name="Category">What the mixture becomes, such as <c>Skin Corr. 1B, H314</c>.</param>
/// <param name="FromPercent">Lower end, percent by mass of the mixture, included.</param>
/// <param name="BelowPercent">Upper end where a range is printed, excluded.</param>
internal sealed record GivenLimit(string Category, double FromPercent, double? BelowPercent);
