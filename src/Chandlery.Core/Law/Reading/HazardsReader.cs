using Chandlery.Core.Hazards;
using Chandlery.Yaml;

namespace Chandlery.Core.Law.Reading;

/// <summary>Reads <c>law/hazards.yaml</c>: the hazard categories, worst first within their groups.</summary>
internal static class HazardsReader
{
    public static HazardVocabulary Read(Fields fields, IReadOnlyCollection<string> statements)
    {
        var categories = new List<HazardCategory>();
        foreach (Fields group in fields.Groups("groups"))
        {
            string name = group.Text("group", "skin sensitisation");
            HazardArea area = group.Enumeration("area", HazardArea.Health);
            string plain = group.Text("plain", "what the class means");
            bool organs = group.OptionalFlag("namesOrgans") ?? false;
            int severity = 0;
            foreach (Fields row in group.Groups("worstFirst"))
            {
                categories.Add(
                    new HazardCategory
                    {
                        Index = categories.Count,
                        ClassCode = row.Text("class", "Skin Sens."),
                        Category = row.OptionalText("category") ?? "",
                        Variant = row.OptionalText("variant") ?? "",
                        Statement = ReadStatement(row, statements),
                        Group = name,
                        Severity = severity++,
                        Plain = plain,
                        MultipliedBy = row.Has("m") ? row.Enumeration("m", MFactorKind.None) : MFactorKind.None,
                        NamesOrgans = organs,
                        Area = area,
                    }
                );
                row.Done();
            }

            group.Done();
        }

        // A code that is wrong has the first hazard as its stand-in.
        if (categories.Count == 0)
        {
            fields.Problems.Add(
                fields.FirstPlace,
                "The file has no hazards.",
                "Write 'groups: [{ group: ..., area: ..., plain: ..., worstFirst: [...] }]'."
            );
        }

        fields.Done();
        return new HazardVocabulary(categories);
    }

    private static StatementCode ReadStatement(Fields row, IReadOnlyCollection<string> statements)
    {
        string text = row.Text("statement", "H317");
        if (StatementCode.TryParse(text) is { } code && statements.Contains(text))
        {
            return code;
        }

        string near = Suggestion.DidYouMean(text, statements);
        row.Problems.Add(row.PlaceOf("statement"), $"There is no statement '{text}'.", near);
        return StatementCode.Of("H317");
    }
}
