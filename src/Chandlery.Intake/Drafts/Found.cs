using Chandlery.Intake.Pages;

namespace Chandlery.Intake.Drafts;

/// <summary>A value that was read from a sheet, with its place and what speaks against it.</summary>
/// <param name="Value">The value.</param>
/// <param name="Document">Index of the PDF that it comes from.</param>
/// <param name="Page">Page of that PDF.</param>
/// <param name="Box">Where it stands on the page.</param>
/// <param name="Doubts">Why a reviewer must look; empty when nothing speaks against it.</param>
public sealed record Found<T>(T Value, int Document, int Page, Box Box, IReadOnlyList<string> Doubts)
{
    private const double LostPerDoubt = 0.6;

    /// <summary>1 when nothing speaks against the value; each doubt takes a share of it away. It is a rank, not a probability.</summary>
    public double Confidence => Math.Pow(LostPerDoubt, Doubts.Count);

    /// <summary>The same with one more doubt.</summary>
    public Found<T> Doubted(string doubt) => this with { Doubts = [.. Doubts, doubt] };

    /// <summary>Another value from the same place.</summary>
    public Found<TOther> As<TOther>(TOther value) => new(value, Document, Page, Box, Doubts);
}
