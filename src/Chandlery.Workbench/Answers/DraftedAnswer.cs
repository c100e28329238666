namespace Chandlery.Workbench.Answers;

/// <summary>That an oil was drafted from its supplier's PDFs.</summary>
/// <param name="Id">Name of its declaration.</param>
internal sealed record DraftedAnswer(string Id);
