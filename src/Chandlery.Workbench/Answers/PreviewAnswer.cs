namespace Chandlery.Workbench.Answers;

/// <summary>A paper to look at.</summary>
/// <param name="Pages">Its pages; empty when there is none.</param>
/// <param name="Warnings">What speaks against handing it out as it is.</param>
/// <param name="WhyNot">Why there is none; null when there is one.</param>
internal sealed record PreviewAnswer(IReadOnlyList<PreviewPage> Pages, IReadOnlyList<string> Warnings, string? WhyNot);
