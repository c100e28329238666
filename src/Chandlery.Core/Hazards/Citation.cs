using System.Diagnostics.CodeAnalysis;

namespace Chandlery.Core.Hazards;

/// <summary>Where a rule stands: document and clause, as written for a reader. It comes from data and is never made up in code.</summary>
public sealed record Citation
{
    private Citation(string text) => Text = text;

    /// <summary>No rule: something that follows from declarations alone.</summary>
    public static Citation None { get; } = new("");

    /// <summary>The words.</summary>
    public string Text { get; }

    /// <summary>True where no rule is cited.</summary>
    public bool IsNone => Text.Length == 0;

    /// <summary>A citation as it stands in a row of data; <see cref="None"/> for an empty text.</summary>
    public static Citation Of(string text) => text.Length == 0 ? None : new Citation(text);

    /// <summary>The words, for print.</summary>
    [return: NotNullIfNotNull(nameof(citation))]
    public static implicit operator string?(Citation? citation) => citation?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
