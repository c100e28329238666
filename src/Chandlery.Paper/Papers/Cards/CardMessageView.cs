using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Cards;

/// <summary>A burn-safety message.</summary>
/// <param name="Symbol">Its drawing; empty for a message without one.</param>
/// <param name="Text">The message, with its figures.</param>
internal sealed record CardMessageView(string Symbol, string Text) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("symbol", Symbol), ("text", Text)];
}
