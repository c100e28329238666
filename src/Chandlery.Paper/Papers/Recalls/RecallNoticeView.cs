using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Recalls;

/// <summary>A recall notice, alone or in a letter.</summary>
/// <param name="Title">The headline.</param>
/// <param name="Lang">Code of the language.</param>
/// <param name="Name">Trade name.</param>
/// <param name="To">Lines of the receiver's address; none for a notice alone.</param>
/// <param name="Subject">What the letter is about; empty for a notice alone.</param>
/// <param name="Intro">First paragraph of the letter; empty for a notice alone.</param>
/// <param name="Parts">The notice.</param>
/// <param name="Answer">What the receiver fills in; empty for nothing.</param>
internal sealed record RecallNoticeView(
    string Title,
    string Lang,
    string Name,
    IReadOnlyList<string> To,
    string Subject,
    string Intro,
    IReadOnlyList<NoticePartView> Parts,
    string Answer
) : ITemplateView
{
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
