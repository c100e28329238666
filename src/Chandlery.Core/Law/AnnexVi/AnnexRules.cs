using Chandlery.Core.Hazards;

namespace Chandlery.Core.Law.AnnexVi;

/// <summary>How the table of harmonised classes is read.</summary>
/// <param name="Edition">The edition whose law the table is.</param>
/// <param name="Acts">The acts, in the order of adoption.</param>
/// <param name="NotComputed">Beginnings of classes that no rule computes.</param>
/// <param name="Notes">What its notes mean.</param>
/// <param name="NotesClause">Where the notes stand.</param>
/// <param name="NamesIn">The language of its names.</param>
/// <param name="Groups">Entries for whole groups of substances.</param>
public sealed record AnnexRules(
    string Edition,
    IReadOnlyList<LegalAct> Acts,
    IReadOnlyList<string> NotComputed,
    IReadOnlyList<AnnexNote> Notes,
    Citation NotesClause,
    string NamesIn,
    IReadOnlyList<AnnexGroup> Groups
)
{
    /// <summary>The act of this short name, or null.</summary>
    public LegalAct? Act(string id) => Acts.FirstOrDefault(a => a.Id == id);

    /// <summary>The note, or null for one that says nothing about a candle.</summary>
    public AnnexNote? Note(string note) => Notes.FirstOrDefault(n => n.Note == note);
}
