using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Chandlery.Core.Hazards;
using Chandlery.Core.Quantities;
using Chandlery.Intake.Wording;
using Chandlery.Yaml;

namespace Chandlery.Intake.Drafts;

/// <summary>Writes a draft as the YAML of an oil's declaration, each value with its page, box and confidence.</summary>
public sealed partial class DraftYaml
{
    /// <summary>What a line begins with that tells a doubt of the value below it.</summary>
    public const string Mark = "# REVIEW: ";

    private readonly StringBuilder text = new();
    private readonly List<ReviewPoint> points = [];
    private readonly OilDraft draft;
    private int line = 1;

    private DraftYaml(OilDraft draft) => this.draft = draft;

    /// <summary>The YAML, and what must be looked at with its lines.</summary>
    public static (string Text, IReadOnlyList<ReviewPoint> Points) Write(OilDraft draft)
    {
        var writer = new DraftYaml(draft);
        writer.WriteAll();
        return (writer.text.ToString(), writer.points);
    }

    private void WriteAll()
    {
        Line("# Drafted from the supplier's PDF by a program. Nothing was guessed: what it could not read is missing or marked.");
        Line("# Compare every line with the PDF; page, box (millimetres from the top left corner) and confidence stand beside it.");
        Line("# No label is printed with this oil until 'reviewed' names who did so and when.");
        foreach (string doubt in draft.Doubts)
        {
            Doubt("", doubt);
        }

        Line("declares: oil");
        Line("draft:");
        Line("  from:");
        foreach (DraftSource source in draft.Sources)
        {
            Line($"    - {{ file: {YamlEdit.Quoted(source.File)}, sha256: {source.Sha256} }}");
        }

        Line("  reviewed: no # then: { by: your name, on: year-month-day }");
        Text("", "name", draft.Name, "the product's name");
        Text("", "supplier", draft.Supplier, "the supplier");
        Sheet();
        Value("", "revised", draft.Revised, IsoDay.Plain, "the sheet's revision date");
        Classes("", draft.Classes);
        if (draft.Classes is null && draft.Ingredients.Count > 0)
        {
            Doubt("", "no class of the product itself was found in section 2; write them where the sheet gives any");
        }

        Ingredients();
        FlashPoint();
        Value("", "densityGramsPerMl", draft.DensityGramsPerMl, Figures.Plain, draft.Ifra is null ? "the density" : "");
        Ifra();
    }

    private void Sheet()
    {
        string number = string.Join(
            ", ",
            new[] { draft.Document?.Value, draft.Version is { } v ? "version " + v.Value : null }.OfType<string>()
        );
        Found<string>? at = draft.Document ?? draft.Version;
        Text("", "document", at?.As("SDS " + number), "the sheet's number or version");
    }

    private void Ingredients()
    {
        if (draft.Ingredients.Count == 0)
        {
            Doubt("", "no ingredient was read; list what section 3 lists");
            return;
        }

        Line("ingredients:");
        foreach (DraftIngredient i in draft.Ingredients)
        {
            foreach (string doubt in i.Doubts)
            {
                Doubt("  ", $"{i.Name.Value}: {doubt}");
            }

            Item(i.Name);
            Text("    ", "cas", i.Cas, "");
            Text("    ", "ec", i.Ec, "");
            Text("    ", "share", i.Share, $"the share of {i.Name.Value}");
            Classes("    ", i.Classes);
            Limits(i.Limits);
            Value("    ", "m", i.M, M, "");
            Value("    ", "ate", i.Toxicity, Estimates, "");
        }
    }

    private void Item(Found<string> name)
    {
        Doubts("  ", "name", name.Doubts);
        Line($"  - name: {YamlEdit.Quoted(name.Value)} {Place(name)}");
    }

    private void Limits(Found<IReadOnlyList<string>>? limits)
    {
        if (limits is not null)
        {
            Doubts("    ", "limits", limits.Doubts);
            Line($"    limits: [{string.Join(", ", limits.Value.Select(YamlEdit.Quoted))}] {Place(limits)}");
        }
    }

    private void Classes(string indent, Found<IReadOnlyList<string>>? classes)
    {
        if (classes is null)
        {
            return;
        }

        Doubts(indent, "classes", classes.Doubts);
        string list = classes.Value.Count == 0 ? "not classified" : $"[{string.Join(", ", classes.Value.Select(YamlEdit.Quoted))}]";
        Line($"{indent}classes: {list} {Place(classes)}");
    }

    private void FlashPoint()
    {
        if (draft.FlashPoint is not { } found)
        {
            Doubt("", "no flash point was found; look in section 9 and write it, since it is compared with the mixing temperature");
            return;
        }

        Doubts("", "flashPoint", found.Doubts);
        string key = found.Value.IsLowerBound ? "aboveCelsius" : "celsius";
        string method = found.Value.Method is { } m ? $", method: {m}" : "";
        Line($"flashPoint: {{ {key}: {Figures.Plain(found.Value.Celsius)}{method} }} {Place(found)}");
    }

    private void Ifra()
    {
        if (draft.Ifra is not { } ifra)
        {
            return;
        }

        Line("ifra:");
        Value("  ", "amendment", ifra.Amendment, a => a.ToString(CultureInfo.InvariantCulture), "the number of the amendment");
        Value("  ", "date", ifra.Date, IsoDay.Plain, "the certificate's date");
        Line("  limits:");
        foreach ((string category, Found<string> limit) in ifra.Limits)
        {
            Doubts("    ", $"category {category}", limit.Doubts);
            Line($"    \"{category}\": {limit.Value} {Place(limit)}");
        }
    }

    private void Text(string indent, string key, Found<string>? found, string missing) =>
        Value(indent, key, found, YamlEdit.Quoted, missing);

    private void Value<T>(string indent, string key, Found<T>? found, Func<T, string> write, string missing)
    {
        if (found is null)
        {
            if (missing.Length > 0)
            {
                Doubt(indent, $"{missing} was not found; add '{key}:'");
            }

            return;
        }

        Doubts(indent, key, found.Doubts);
        Line($"{indent}{key}: {write(found.Value)} {Place(found)}");
    }

    private static string M(MFactors m) =>
        m.Acute is { } a && m.Chronic is { } c && a == c
            ? Figures.Plain(a)
            : $"{{ {string.Join(", ", new[] { m.Acute is { } acute ? "acute: " + Figures.Plain(acute) : null, m.Chronic is { } chronic ? "chronic: " + Figures.Plain(chronic) : null }.OfType<string>())} }}";

    private static string Estimates(IReadOnlyList<ToxicityEstimate> estimates) =>
        $"{{ {string.Join(", ", estimates.Select(e => $"{KeyOf(e.Route)}: {Figures.Plain(e.Value)}"))} }}";

    private static string KeyOf(ExposureRoute route) =>
        route switch
        {
            ExposureRoute.Oral => "oralMgPerKg",
            ExposureRoute.Dermal => "dermalMgPerKg",
            ExposureRoute.InhalationGas => "gasPpm",
            ExposureRoute.InhalationVapour => "vapourMgPerLitre",
            _ => "dustMgPerLitre",
        };

    private string Place<T>(Found<T> found)
    {
        string document = draft.Sources.Count > 1 ? $"{draft.Sources[found.Document].File} " : "";
        return FormattableString.Invariant(
            $"# {document}page {found.Page} [{found.Box.Left:0.0}, {found.Box.Top:0.0}, {found.Box.Right:0.0}, {found.Box.Bottom:0.0}] {found.Confidence:0.00}"
        );
    }

    private void Doubts(string indent, string key, IReadOnlyList<string> doubts)
    {
        foreach (string doubt in doubts)
        {
            Doubt(indent, $"{key}: {doubt}");
        }
    }

    private void Doubt(string indent, string what)
    {
        string oneLine = Breaks().Replace(what, " ");
        points.Add(new ReviewPoint(line, oneLine));
        Line(indent + Mark + oneLine);
    }

    private void Line(string content)
    {
        text.Append(content.TrimEnd()).Append('\n');
        line++;
    }

    [GeneratedRegex(@"[\p{Cc}\u2028\u2029]+")]
    private static partial Regex Breaks();
}
