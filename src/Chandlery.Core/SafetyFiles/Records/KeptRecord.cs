namespace Chandlery.Core.SafetyFiles.Records;

/// <summary>A document that the maker keeps: headings with texts and tables.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Name">What it is about.</param>
/// <param name="Lines">What stands under the title.</param>
/// <param name="Sections">Its sections.</param>
public sealed record KeptRecord(string Title, string Name, IReadOnlyList<string> Lines, IReadOnlyList<RecordSection> Sections)
{
    /// <summary>Code of the language that it is written in.</summary>
    public string Language { get; init; } = "en";
}
