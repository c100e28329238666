namespace Chandlery.Intake.Drafts;

/// <summary>An IFRA certificate as read.</summary>
/// <param name="Amendment">Number of the amendment.</param>
/// <param name="Date">Its date.</param>
/// <param name="Limits">Text of the limit by category: a figure, "not restricted" or "not permitted".</param>
public sealed record DraftIfra(Found<int>? Amendment, Found<DateOnly>? Date, IReadOnlyList<(string Category, Found<string> Limit)> Limits);
