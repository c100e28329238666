using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Recalls;

/// <summary>A recall notice, alone or in a letter.</summary>
internal sealed record RecallNoticeView : ITemplateView
{
    /// <summary>The headline.</summary>
    public required string Title { get; init; }

    /// <summary>Code of the language.</summary>
    public required string Lang { get; init; }

    /// <summary>Trade name.</summary>
    public required string Name { get; init; }

    /// <summary>Lines of the receiver's address; none for a notice alone.</summary>
    public required IReadOnlyList<string> To { get; init; }

    /// <summary>What the letter is about; empty for a notice alone.</summary>
    public required string Subject { get; init; }

    /// <summary>First paragraph of the letter; empty for a notice alone.</summary>
    public required string Intro { get; init; }

    /// <summary>The notice.</summary>
    public required IReadOnlyList<NoticePartView> Parts { get; init; }

    /// <summary>What the receiver fills in; empty for nothing.</summary>
    public required string Answer { get; init; }

    /// <inheritdoc/>
    public string Template => "recall-notice.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("title", Title),
            ("lang", Lang),
            ("name", Name),
            ("to", To),
            ("subject", Subject),
            ("intro", Intro),
            ("parts", Parts),
            ("answer", Answer),
        ];
}
