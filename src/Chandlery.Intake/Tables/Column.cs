namespace Chandlery.Intake.Tables;

/// <summary>A column of a table.</summary>
/// <param name="Kinds">What it holds, from its heading; empty when the heading says nothing that is known.</param>
/// <param name="Heading">The heading's text.</param>
internal sealed record Column(IReadOnlyList<string> Kinds, string Heading);
