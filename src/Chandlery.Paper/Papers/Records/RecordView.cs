using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Records;

/// <summary>A document that the maker keeps.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Name">What it is about.</param>
/// <param name="Lang">Code of its language.</param>
/// <param name="Lines">What stands under the title.</param>
/// <param name="Sections">Its sections.</param>
internal sealed record RecordView(
    string Title,
    string Name,
    string Lang,
    IReadOnlyList<string> Lines,
    IReadOnlyList<RecordSectionView> Sections
) : ITemplateView
{
    /// <inheritdoc/>
    public string Template => "record.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [("title", Title), ("name", Name), ("lang", Lang), ("lines", Lines), ("sections", Sections)];
}
