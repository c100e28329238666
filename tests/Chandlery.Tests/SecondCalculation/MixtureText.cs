using System.Globalization;

namespace Chandlery.Tests.SecondCalculation;

/// <summary>
/// Mixtures in one line, to print and to read: substances between plus signs, their fields between bars, such as
/// <c>1.5 | Skin Corr. 1B, H314 | Eye Dam. 1, H318: 1 + 20 | Acute Tox. 4, H332 | vapour 15 + 10 | unknown + 5 | undeclared</c>.
/// A limit with an upper end is written <c>Skin Irrit. 2, H315: 0.5 to 2</c>. The substances are s1, s2... A liquid has a part of its own
/// (<see cref="LiquidText"/>).
/// </summary>
internal static class MixtureText
{
    /// <summary>Writes a mixture.</summary>
    public static string Write(GivenMixture mixture)
    {
        List<string> parts = [.. mixture.Substances.Select(Write)];
        if (mixture.UndeclaredPercent > 0)
        {
            parts.Add(Plain(mixture.UndeclaredPercent) + " | undeclared");
        }

        if (mixture.Liquid is { } liquid)
        {
            parts.Add(LiquidText.Write(liquid));
        }

        return string.Join(" + ", parts);
    }

    /// <summary>Reads a mixture.</summary>
    public static GivenMixture Read(string text)
    {
        List<GivenSubstance> substances = [];
        double undeclared = 0;
        GivenLiquid? liquid = null;
        foreach (string part in text.Split(" + "))
        {
            string[] fields = part.Split(" | ");
            if (fields.Contains("undeclared"))
            {
                undeclared += Number(fields[0]);
            }
            else if (fields[0] == LiquidText.Start)
            {
                liquid = LiquidText.Read(fields);
            }
            else
            {
                substances.Add(Substance("s" + (substances.Count + 1), fields));
            }
        }

        return new GivenMixture(substances, undeclared, liquid);
    }

    private static string Write(GivenSubstance substance)
    {
        List<string> fields = [Plain(substance.Percent), .. substance.Classes ?? ["unknown"]];
        fields.AddRange(
            substance.Limits.Select(l =>
                $"{l.Category}: {Plain(l.FromPercent)}{(l.BelowPercent is { } below ? " to " + Plain(below) : "")}"
            )
        );
        fields.AddRange(substance.Estimates.Select(e => $"{Word(e.Form)} {Plain(e.Figure)}"));
        if (substance.AcuteM is { } acute)
        {
            fields.Add("acuteM " + Plain(acute));
        }

        if (substance.ChronicM is { } chronic)
        {
            fields.Add("chronicM " + Plain(chronic));
        }

        return string.Join(" | ", fields);
    }

    private static GivenSubstance Substance(string name, string[] fields)
    {
        List<string>? classes = fields.Contains("unknown") ? null : [];
        List<GivenLimit> limits = [];
        List<GivenEstimate> estimates = [];
        double? acuteM = null;
        double? chronicM = null;
        foreach (string field in fields.Skip(1).Where(f => f != "unknown"))
        {
            string[] words = field.Split(' ');
            if (field.Split(": ") is [string category, string range])
            {
                string[] ends = range.Split(" to ");
                limits.Add(new GivenLimit(category, Number(ends[0]), ends.Length > 1 ? Number(ends[1]) : null));
            }
            else if (words[0] == "acuteM")
            {
                acuteM = Number(words[1]);
            }
            else if (words[0] == "chronicM")
            {
                chronicM = Number(words[1]);
            }
            else if (Enum.GetValues<GivenForm>().Where(f => Word(f) == words[0]).Select(f => (GivenForm?)f).FirstOrDefault() is { } form)
            {
                estimates.Add(new GivenEstimate(form, Number(words[1])));
            }
            else
            {
                classes!.Add(field);
            }
        }

        return new GivenSubstance(name, Number(fields[0]), classes, limits, acuteM, chronicM, estimates);
    }

    private static string Word(GivenForm form) => form.ToString().ToLowerInvariant();

    private static string Plain(double value) => value.ToString(CultureInfo.InvariantCulture);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
