using System.Globalization;
using Chandlery.Yaml;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Tests.Support;

/// <summary>A declaration with any of its fields, made from a seed, whether or not its figures make sense together.</summary>
internal sealed class AnyDeclaration(int seed)
{
    // Letters that CSV, YAML, spreadsheets and numbers each have a use of their own for.
    private const string Awkward = "abZ09 .,;:#'\"=+-@\t\n\\|{}[]&*!%äß漢";
    private static readonly string[] Codes = ["IE", "DE", "de", "load"];
    private static readonly TextPlace Nowhere = new("", 0, 0);
    private readonly Random random = new(seed);

    /// <summary>A map of the shape with at least one field.</summary>
    public YamlMap Of(Shape shape)
    {
        int always = random.Next(shape.Fields.Count);
        return new YamlMap(
            [.. shape.Fields.Where((_, i) => i == always || random.Next(2) == 0).Select(f => new YamlEntry(f.Key, Nowhere, Value(f)))],
            Nowhere
        );
    }

    private YamlValue Value(Field field) =>
        field switch
        {
            NumberField => Plain(Number()),
            FlagField => Plain(random.Next(2) == 0 ? "yes" : "no"),
            DayField => Plain($"2026-02-{random.Next(10, 29)}"),
            ChoiceField choice => Plain(choice.Choices[random.Next(choice.Choices.Count)]),
            GroupField group => random.Next(5) == 0 ? new YamlMap([], Nowhere) : Of(group.Shape),
            GroupsField groups => List(() => Of(groups.Item)),
            EitherField either => Value(either.Ways[random.Next(either.Ways.Count)]),
            TextsField { Pattern: not null } => List(() => Plain(Codes[random.Next(Codes.Length)])),
            TextsField => List(Text),
            _ => Text(),
        };

    private string Number()
    {
        int places = random.Next(4);
        return (random.Next(100_000) / Math.Pow(10, places)).ToString("F" + places, CultureInfo.InvariantCulture);
    }

    private YamlScalar Text()
    {
        string text = new([.. Enumerable.Range(0, random.Next(1, 12)).Select(_ => Awkward[random.Next(Awkward.Length)])]);
        return string.IsNullOrWhiteSpace(text) ? Plain("x") : Plain(text);
    }

    private YamlList List(Func<YamlValue> item) => new([.. Enumerable.Range(0, random.Next(4)).Select(_ => item())], Nowhere);

    private static YamlScalar Plain(string text) => new(text, false, Nowhere);
}
