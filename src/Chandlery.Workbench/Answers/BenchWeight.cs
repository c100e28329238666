namespace Chandlery.Workbench.Answers;

/// <summary>Something to weigh.</summary>
/// <param name="Name">What people call it.</param>
/// <param name="Kind">What it is, in a word.</param>
/// <param name="Id">Name of an oil's or extra's declaration; null for a wax.</param>
/// <param name="Grams">How much.</param>
internal sealed record BenchWeight(string Name, string Kind, string? Id, double Grams);
