using Chandlery.Core.Hazards;
using Chandlery.Core.Law.AnnexVi;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads how the table of harmonised classes is read: its acts, and what its notes mean.</summary>
internal static class AnnexReader
{
    /// <summary>The rules of the table.</summary>
    /// <param name="fields">The file.</param>
    /// <param name="vocabulary">All hazard categories.</param>
    /// <param name="editions">The editions that there are.</param>
    /// <param name="languages">The languages that there are texts in.</param>
    public static AnnexRules Read(
        Fields fields,
        HazardVocabulary vocabulary,
        IReadOnlyList<string> editions,
        IReadOnlyList<string> languages
    )
    {
        var acts = new List<LegalAct>();
        foreach (Fields row in fields.Groups("acts"))
        {
            acts.Add(
                new LegalAct(
                    row.Text("id", "ATP23"),
                    row.Text("title", "the act as it is cited"),
                    row.Text("celex", "32025R1222"),
                    acts.Count + 1
                )
            );
            row.Done();
        }

        if (acts.Count == 0)
        {
            fields.Problems.Add(fields.FirstPlace, "The table has no acts.", "Write 'acts: [{ id: ..., title: ..., celex: ... }]'.");
        }

        string[] groups = [.. vocabulary.Categories.Select(c => c.Group).Distinct()];
        var notes = new List<AnnexNote>();
        foreach (Fields row in fields.Groups("notes"))
        {
            notes.Add(
                new AnnexNote(
                    row.Text("note", "N"),
                    row.Text("means", "what it means"),
                    row.Choices("lets", groups),
                    row.OptionalFlag("told") ?? false
                )
                {
                    NotIn = row.Enumerations<PhysicalState>("notIn"),
                }
            );
            row.Done();
        }

        var found = new List<AnnexGroup>();
        foreach (Fields row in fields.Groups("groups"))
        {
            found.Add(new AnnexGroup(row.Text("index", "082-001-00-6"), row.Texts("words"), row.Texts("unless")));
            row.Done();
        }

        var rules = new AnnexRules(
            fields.Choice("edition", [.. editions]),
            acts,
            fields.Texts("notComputed"),
            notes,
            LawCodes.Citation(fields, "notesClause"),
            fields.Choice("namesIn", [.. languages]),
            found
        );
        fields.Done();
        return rules;
    }
}
