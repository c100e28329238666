using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Recalls;

/// <summary>A part of a recall notice.</summary>
/// <param name="Heading">Its heading; empty for none.</param>
/// <param name="Texts">Its sentences.</param>
/// <param name="Picture">The drawing below them; empty for none.</param>
internal sealed record NoticePartView(string Heading, IReadOnlyList<string> Texts, string Picture) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("heading", Heading), ("texts", Texts), ("picture", Picture)];
}
