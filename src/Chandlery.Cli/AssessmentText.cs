using System.Text;
using Chandlery.Core.Assessed;
using Chandlery.Core.Classified;
using Chandlery.Core.Composed;
using Chandlery.Core.Labelled;
using Chandlery.Core.Law;
using Chandlery.Core.Limits;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli;

/// <summary>An assessment as a page for a terminal or a text file.</summary>
internal static class AssessmentText
{
    /// <summary>The page.</summary>
    /// <param name="a">The assessment.</param>
    /// <param name="width">Letters in a line.</param>
    /// <param name="ink">Colours; none for a file.</param>
    public static string Render(Assessment a, int width, Ink ink)
    {
        var text = new StringBuilder();
        string title = a.Batch is null ? a.Candle.Name : $"{a.Candle.Name}, batch {a.Batch.Code}";
        text.AppendLine(ink.Heading(title)).AppendLine(new string('=', title.Length));
        Prose(text, $"{a.Edition.Name}, as of {a.AsOf:yyyy-MM-dd}; sold in {string.Join(", ", a.Places.Select(p => p.Name))}", width);
        Prose(text, LoadLine(a), width);
        text.AppendLine();
        Verdict(text, ink, a, width);
        Heading(text, ink, a.Kind.Say("In the finished candle"));
        text.Append(CompositionTable(a).Render(width, ink));
        text.AppendLine(
            a.Composition.UnknownHigh.Value > 0.005
                ? $"Not declared by anybody: between {a.Composition.UnknownLow} and {a.Composition.UnknownHigh}."
                : "Everything is declared."
        );
        Heading(text, ink, "Classification");
        text.Append(Classes(a, width, ink));
        Heading(text, ink, "On the label");
        text.Append(Label(a, width, ink));
        List(
            text,
            ink,
            "May be left off this small package",
            a.SmallPackageRelief.Select(r => $"{r.Code}: {r.Because} [{r.Clause}]"),
            width
        );
        Heading(text, ink, "Limits");
        text.Append(Limits(a).Render(width, ink));
        List(text, ink, "Could not be assessed", a.Unassessed.Select(a.Kind.Say), width);
        List(text, ink, "To look at", a.Findings.Where(f => f.Gravity == Gravity.Look).Select(f => f.What), width);
        List(text, ink, "Known changes of the law", Changes(a), width);
        text.AppendLine();
        Prose(text, "This helps; it does not replace local law, its authorities, or a competent person.", width);
        return text.ToString();
    }

    private static IEnumerable<string> Changes(Assessment a)
    {
        if (a.NextLaw is { } law)
        {
            yield return $"{law.On:yyyy-MM-dd}, law: {string.Join("; ", law.What)} [{law.Clause}]";
        }

        if (a.NextExpected is { } expected)
        {
            yield return $"{expected.On:yyyy-MM-dd}, expected, not law: {string.Join("; ", expected.What)} [{expected.Clause}]";
        }
    }

    private static void Prose(StringBuilder text, string sentence, int width)
    {
        foreach (string line in TextTable.Wrap(sentence, width))
        {
            text.AppendLine(line);
        }
    }

    private static string LoadLine(Assessment a)
    {
        Recipe recipe = a.Composition.Recipe;
        if (a.Kind.State == PhysicalState.Liquid)
        {
            return $"Fragrance load: {recipe.MeltLoadOfWax} of the base = {recipe.MeltLoadOfCandle} of the finished liquid";
        }

        string topUp = recipe.TopUp.Value > 0 ? $"; after the unscented second pour {recipe.Load} of the finished candle" : "";
        return $"Fragrance load: {recipe.MeltLoadOfWax} of the wax = {recipe.MeltLoadOfCandle} of the melt{topUp}";
    }

    private static void Verdict(StringBuilder text, Ink ink, Assessment a, int width)
    {
        List<Finding> stops = [.. a.Findings.Where(f => f.Gravity == Gravity.Stop)];
        string verdict =
            stops.Count > 0 ? $"DO NOT SELL: {stops.Count} finding{(stops.Count == 1 ? "" : "s")} must be cleared first."
            : a.Edition.Label.ShowsHazards && a.Classification.Classes.Count > 0
                ? "Classified as hazardous: the label needs all that is listed below."
            : a.Label.Supplemental.Count > 0
                ? $"Not classified, but the label must bear {string.Join(" and ", a.Label.Supplemental.Select(s => s.Code.Text).Distinct())}."
            : !a.Edition.Label.ShowsHazards ? "A consumer candle: its label carries fire-safety warnings, not this classification."
            : "Not classified from what is declared: no hazard label follows.";
        foreach (string line in TextTable.Wrap(verdict, width))
        {
            text.AppendLine(stops.Count > 0 ? ink.Stop(line) : ink.Heading(line));
        }

        foreach (Finding stop in stops)
        {
            Item(text, stop.Clause.IsNone ? stop.What : $"{stop.What} ({stop.Clause})", width);
        }
    }

    private static TextTable CompositionTable(Assessment a)
    {
        var table = new TextTable("%", "CAS", "Substance", "Classes that count");
        foreach (Substance substance in a.Substances.Where(s => s.Ingredient.High.Value >= 0.001))
        {
            ComposedIngredient i = substance.Ingredient;
            string range =
                Math.Abs(i.High.Value - i.Low.Value) < 1e-9
                    ? Figures.Plain(i.High.Value)
                    : $"{Figures.Plain(i.Low.Value)} - {Figures.Plain(i.High.Value)}";
            string classes =
                !substance.IsKnown ? "UNKNOWN: its sheet is silent"
                : substance.Hazards.Count == 0 ? "none"
                : string.Join(", ", substance.Hazards.Select(h => h.Category.Code));
            string name = i.IsRemainder ? $"{i.Identity.Name} (what its constituents leave)" : i.Identity.Name;
            table.Add(range, i.Identity.Cas?.Text ?? "-", name.Length > 44 ? name[..43] + "…" : name, classes);
        }

        return table;
    }

    private static string Classes(Assessment a, int width, Ink ink)
    {
        if (a.Classification.Classes.Count == 0)
        {
            return "No class is reached.\n";
        }

        var table = new TextTable("Class", "Statement", "Why");
        foreach (ClassResult c in a.Classification.Classes)
        {
            table.Add(c.Category.Code, c.Statement, $"{a.Kind.Say(c.Working.Sentence)} [{c.Working.Clause}]");
        }

        return table.Render(width, ink);
    }

    private static string Label(Assessment a, int width, Ink ink)
    {
        LabelElements label = a.Label;
        if (!label.All.Any())
        {
            string safety = a.Kind.Burns ? "burn-safety messages" : "messages on safe use";
            return $"Nothing that the law on hazardous mixtures asks for. Name, address, batch, quantity and {safety} stand there all the same.\n";
        }

        Language language = a.Languages.FirstOrDefault(l => l.Code == "en") ?? a.Languages[0];
        var table = new TextTable("What", "Code", "Text or reason");
        if (a.Ufi is { } ufi)
        {
            table.Add("UFI", ufi, $"for the poison centres [{a.Edition.Ufi.Clause}]");
        }

        foreach (PictogramChoice pictogram in label.Pictograms)
        {
            table.Add("pictogram", pictogram.Code, pictogram.Because);
        }

        if (label.SignalWord is { } word)
        {
            table.Add("signal word", word.Code, word.Because);
        }

        foreach (
            (string what, IReadOnlyList<StatementChoice> choices) in new[]
            {
                ("hazard", label.Hazard),
                ("supplement", label.Supplemental),
                ("precaution", label.Precautionary),
            }
        )
        {
            foreach (StatementChoice choice in choices)
            {
                table.Add(what, choice.Code, StatementText.Printed(language, choice.Code, label));
            }
        }

        foreach (NamedSubstance named in label.Named)
        {
            table.Add("named", named.Cas ?? "-", $"{named.Name}: {a.Kind.Say(named.Because)}");
        }

        return table.Render(width, ink);
    }

    private static TextTable Limits(Assessment a)
    {
        var table = new TextTable("Holds", "Value", "Limit", "Unit", "Margin", "What");
        foreach (LimitCheck limit in a.Limits)
        {
            table.Add(
                limit.Holds == false,
                limit.Holds switch
                {
                    true => "yes",
                    false => "NO",
                    null => "unknown",
                },
                Number(limit.Value),
                Number(limit.Limit),
                limit.Unit,
                Number(limit.Margin),
                limit.Name
            );
        }

        return table;
    }

    private static string Number(double? value) => value is { } v ? Figures.Plain(v) : "-";

    private static void List(StringBuilder text, Ink ink, string heading, IEnumerable<string> items, int width)
    {
        List<string> all = [.. items];
        if (all.Count == 0)
        {
            return;
        }

        Heading(text, ink, heading);
        foreach (string item in all)
        {
            Item(text, item, width);
        }
    }

    private static void Item(StringBuilder text, string item, int width)
    {
        List<string> lines = TextTable.Wrap(item, width - 2);
        text.AppendLine("- " + string.Join(Environment.NewLine + "  ", lines));
    }

    private static void Heading(StringBuilder text, Ink ink, string heading) =>
        text.AppendLine().AppendLine(ink.Heading(heading)).AppendLine(new string('-', heading.Length));
}
