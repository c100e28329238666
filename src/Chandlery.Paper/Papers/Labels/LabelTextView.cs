using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Labels;

/// <summary>What the law puts on a label, in one language. Texts that do not apply are empty.</summary>
/// <param name="Lang">Code of the language.</param>
/// <param name="Tag">The language's code where the label has several.</param>
/// <param name="SignalWord">Signal word.</param>
/// <param name="Contains">Names of the substances that must be named.</param>
/// <param name="Hazard">Hazard statements.</param>
/// <param name="Precautionary">Precautionary statements.</param>
/// <param name="Supplemental">Supplemental statements, and the shares of unknown hazard.</param>
internal sealed record LabelTextView(
    string Lang,
    string Tag,
    string SignalWord,
    string Contains,
    string Hazard,
    string Precautionary,
    string Supplemental
) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("lang", Lang),
            ("tag", Tag),
            ("signal_word", SignalWord),
            ("contains", Contains),
            ("hazard", Hazard),
            ("precautionary", Precautionary),
            ("supplemental", Supplemental),
        ];
}
