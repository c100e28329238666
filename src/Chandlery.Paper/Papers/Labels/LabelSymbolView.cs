using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>A safety symbol on a label.</summary>
/// <param name="Symbol">Its drawing.</param>
/// <param name="Caption">What stands below it, or empty.</param>
internal sealed record LabelSymbolView(string Symbol, string Caption) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("symbol", Symbol), ("caption", Caption)];
}
