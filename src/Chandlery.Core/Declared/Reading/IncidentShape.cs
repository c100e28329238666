using Chandlery.Yaml.Shapes;

namespace Chandlery.Core.Declared.Reading;

/// <summary>Fields of an incident.</summary>
internal static class IncidentShape
{
    public static readonly ChoiceField Kind = new(
        "kind",
        "complaint (nothing that could have hurt), accident (it hurt or damaged, or could have), authority (asks or orders).",
        ["complaint", "accident", "authority"]
    )
    {
        Needed = true,
    };

    public static readonly TextField Candle = BatchShape.Candle;
    public static readonly TextField Batch = DispatchShape.Batch with { Needed = false };
    public static readonly TextField Country = PartyShape.Country with
    {
        About = "Country code of the place where it happened.",
        Needed = true,
    };
    public static readonly DayField Known = new("known", "The day on which you came to know of it: clocks run from it.") { Needed = true };
    public static readonly TextField Happened = new("happened", "What happened.", "The vessel cracked.") { Needed = true };

    public static readonly ChoiceField Harm = new(
        "harm",
        "What harm was done; unknown counts as the worst.",
        ["nothing", "damage", "injury", "death", "unknown"]
    )
    {
        Needed = true,
    };

    public static readonly TextsField Risks = new(
        "risks",
        "Which risks of the technical file it touches, by their short names, such as several-wicks: their proof is in question until the incident is closed."
    );

    public static readonly TextField Found = new("found", "What was found out.", "a flaw in the glass");
    public static readonly DayField Day = new("on", "The day.") { Needed = true };
    public static readonly TextField What = new("what", "What was done.", "asked for the vessel back") { Needed = true };

    public static readonly GroupsField Done = new("done", "What was done.", new Shape("dayNote", "Something done on a day.", [Day, What]));

    public static readonly TextField Clock = new(
        "clock",
        "The duty that it answers, by its short name in 'chandlery incidents'.",
        "accident"
    )
    {
        Needed = true,
    };

    public static readonly TextField Reference = new("reference", "The authority's reference, or where the report is kept.", "2026-118");

    public static readonly GroupsField Reported = new(
        "reported",
        "Reports that were made.",
        new Shape("incidentReport", "A report to an authority.", [Day, Clock, Reference])
    );

    public static readonly DayField Closed = new("closed", "When it was closed.");
    public static readonly GroupField Person = new("person", "Who told of it.", DispatchShape.Somebody);

    public static readonly Shape Incident = new(
        "incident",
        "A complaint, an accident or a letter of an authority",
        [Kind, Candle, Batch, Country, Known, Happened, Harm, Risks, Found, Done, Reported, Closed, Person, DispatchShape.Forgotten]
    )
    {
        NotTogether = ["person", "forgotten"],
    };
}
