using Chandlery.Core.Composed;
using Chandlery.Core.Quantities;
using Chandlery.Yaml;

namespace Chandlery.Core.Asked.Trials;

/// <summary>A trial under one edition of the law, as told to people and programs.</summary>
public sealed record TrialLine
{
    /// <summary>Its file name without ending.</summary>
    public required string Id { get; init; }

    /// <summary>What the maker calls it.</summary>
    public required string Name { get; init; }

    /// <summary>The day on which it was smelt.</summary>
    public required string On { get; init; }

    /// <summary>1 to 5; null when nobody has said.</summary>
    public required int? Stars { get; init; }

    /// <summary>How it smells; null when nothing is noted.</summary>
    public required string? Smells { get; init; }

    /// <summary>Each oil's name and percent of the blend.</summary>
    public required IReadOnlyList<string> Blend { get; init; }

    /// <summary>The wax.</summary>
    public required string Wax { get; init; }

    /// <summary>The load with its basis.</summary>
    public required string Load { get; init; }

    /// <summary>Edition of the law.</summary>
    public required string Edition { get; init; }

    /// <summary>Places of sale under it.</summary>
    public required IReadOnlyList<string> Places { get; init; }

    /// <summary>Classes of a candle of this blend.</summary>
    public required IReadOnlyList<string> Classes { get; init; }

    /// <summary>Danger, Warning, or null.</summary>
    public required string? SignalWord { get; init; }

    /// <summary>Hazard and supplemental statements.</summary>
    public required IReadOnlyList<string> Statements { get; init; }

    /// <summary>What would stop the sale.</summary>
    public required IReadOnlyList<string> Stops { get; init; }

    /// <summary>Limits that could not be checked.</summary>
    public required IReadOnlyList<string> NotChecked { get; init; }

    /// <summary>What could not be assessed.</summary>
    public required IReadOnlyList<string> Unassessed { get; init; }

    /// <summary>The line of a verdict.</summary>
    public static TrialLine Of(TrialVerdict v) =>
        new()
        {
            Id = v.Trial.Id,
            Name = v.Trial.Name,
            On = IsoDay.Plain(v.Trial.On),
            Stars = v.Trial.Stars,
            Smells = v.Trial.Smells,
            Blend = BlendOf(v.Recipe),
            Wax = v.Question.Wax.Name,
            Load = v.Question.Load.ToString(),
            Edition = v.Verdict.Law.Edition.Id,
            Places = [.. v.Places.Select(p => p.Code)],
            Classes = [.. v.Verdict.Classification.Classes.Select(c => c.Category.Code)],
            SignalWord = v.Verdict.Label.SignalWord?.Text,
            Statements = [.. v.Verdict.Label.Hazard.Concat(v.Verdict.Label.Supplemental).Select(s => s.Text)],
            Stops = [.. v.Stops.Select(s => s.What)],
            NotChecked = [.. v.Limits.Where(l => l.Holds is null).Select(l => $"{l.Name}: {l.Explanation}")],
            Unassessed = v.Unassessed,
        };

    /// <summary>Each oil's name and percent of the blend.</summary>
    public static IReadOnlyList<string> BlendOf(Recipe recipe) =>
        [.. recipe.Oils.Select(o => $"{o.Oil.Name} {Figures.Rounded(o.ShareOfBlend.Value, 2)} %")];
}
