using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A safety symbol on a label.</summary>
/// <param name="Symbol">Its drawing.</param>
/// <param name="Caption">What stands below it, or empty.</param>
/// <param name="About">What it says, in words.</param>
internal sealed record LabelSymbolView(string Symbol, string Caption, string About) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("symbol", Symbol), ("caption", Caption), ("about", About)];
}
