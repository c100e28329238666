using Chandlery.Core.Assessed;
using Chandlery.Core.Law;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers;

/// <summary>The warning of ASTM F2058 (its three messages are from memory of the standard).</summary>
/// <param name="Word">Signal word; empty where the standard does not rule.</param>
/// <param name="Messages">The messages; empty where it does not rule.</param>
internal sealed record UsWarningView(string Word, IReadOnlyList<string> Messages) : IView
{
    /// <summary>The warning of a candle.</summary>
    public static UsWarningView Of(Assessment a, Language language) =>
        a.Edition.Label.Shows == LabelContent.FireSafety
            ? new UsWarningView(language.Words["usWarning"], [.. a.Edition.Label.Warnings.Select(key => language.Words[key])])
            : new UsWarningView("", []);

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("word", Word), ("messages", Messages)];
}
