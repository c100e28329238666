using System.Diagnostics.CodeAnalysis;

namespace Chandlery.Core.Hazards;

/// <summary>A signal word; which word a label prints for it is a matter of the language.</summary>
public sealed record SignalWord
{
    private SignalWord(string text, string key)
    {
        Text = text;
        Key = key;
    }

    /// <summary>For the graver hazards.</summary>
    public static SignalWord Danger { get; } = new("Danger", "danger");

    /// <summary>For the lesser hazards.</summary>
    public static SignalWord Warning { get; } = new("Warning", "warning");

    /// <summary>Both, the graver first.</summary>
    public static IReadOnlyList<SignalWord> All { get; } = [Danger, Warning];

    /// <summary>The word in English.</summary>
    public string Text { get; }

    /// <summary>The key of the word among a language's words.</summary>
    public string Key { get; }

    /// <summary>The English word, for print.</summary>
    [return: NotNullIfNotNull(nameof(word))]
    public static implicit operator string?(SignalWord? word) => word?.Text;

    /// <inheritdoc/>
    public override string ToString() => Text;
}
