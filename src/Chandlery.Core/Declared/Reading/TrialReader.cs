using Chandlery.Yaml;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Reads trials.</summary>
internal static class TrialReader
{
    public static Trial ReadTrial(Fields fields, string id)
    {
        List<OilPart> oils = CandleReader.ReadOils(fields, TrialShape.Oils);
        foreach (OilPart part in oils.Where(p => p.Measure == OilMeasure.Share))
        {
            fields.Problems.Add(
                part.Place,
                "A trial needs what was dropped or weighed, not a share.",
                "Write 'drops', 'grams' or 'millilitres' for each oil."
            );
        }

        if (oils.Count == 0 && fields.Problems.None)
        {
            fields.Lacks(TrialShape.Oils, "List each oil with its drops: '- { oil: fig-leaf, drops: 12 }'.");
        }

        return new Trial
        {
            Id = id,
            Place = fields.Place,
            Name = fields.Text(TrialShape.Name),
            On = fields.Day(TrialShape.On),
            Oils = oils,
            Smells = fields.OptionalText(TrialShape.Smells),
            Stars = fields.OptionalNumber(TrialShape.Stars) is { } stars ? (int)stars : null,
            Wax = fields.Has(TrialShape.Wax) ? ReferenceReader.Read(fields, TrialShape.Wax) : null,
            Load = LoadReader.Read(fields, TrialShape.Load),
        };
    }
}
