namespace Chandlery.Workbench.Answers;

/// <summary>Labels to print on.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Count">How many labels a sheet has; null for a roll.</param>
internal sealed record StockOffer(string Id, string Name, int? Count);
