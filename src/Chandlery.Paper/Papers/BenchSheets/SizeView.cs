using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.BenchSheets;

/// <summary>What goes into each vessel of one size.</summary>
/// <param name="Name">The candle.</param>
/// <param name="Count">How many; of boxes of several vessels, of how many each.</param>
/// <param name="First">First pour into one vessel, with its unit; behind it in brackets what those of a box come to.</param>
/// <param name="TopUp">Second pour, likewise; a dash when there is none.</param>
/// <param name="Gap">What the chosen gap comes to; empty where none was chosen.</param>
internal sealed record SizeView(string Name, string Count, string First, string TopUp, string Gap) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("name", Name), ("count", Count), ("first", First), ("top_up", TopUp), ("gap", Gap)];
}
