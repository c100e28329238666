using Chandlery.Core.Declared.Reading;
using Chandlery.Yaml.Shapes;

namespace Chandlery.Workbench.Forms;

/// <summary>The forms of all kinds of declaration, made of what their readers take: no field can be missing from the page.</summary>
internal static class FormShapes
{
    /// <summary>The fields of each kind, by its name.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<FormField>> All { get; } =
        DeclarationShapes.All.ToDictionary(s => s.Name, s => (IReadOnlyList<FormField>)[.. s.Fields.Select(Of)]);

    private static FormField Of(Field field) =>
        field switch
        {
            NumberField n => Plain(n, "number") with { Example = n.Example, IsWhole = n.Whole },
            DayField d => Plain(d, "day"),
            FlagField f => Plain(f, "flag") with { Choices = ["yes", "no"] },
            ChoiceField c => Plain(c, "choice") with { Choices = c.Choices },
            TextField t => Plain(t, "text") with { Example = t.Example.Trim('\''), Names = t.Names, Endings = t.Endings },
            TextsField t => Plain(t, "texts") with { Names = t.Names, Endings = t.Endings },
            GroupField g => Plain(g, "group") with { Fields = [.. g.Shape.Fields.Select(Of)] },
            GroupsField g => Plain(g, "groups") with { Fields = [.. g.Item.Fields.Select(Of)] },
            MapField m => Plain(m, "map") with { Fields = [Of(m.Value)] },
            EitherField e => Plain(e, "either") with { Fields = [.. e.Ways.Select(Of)] },
            _ => throw new NotSupportedException(field.GetType().Name),
        };

    private static FormField Plain(Field field, string kind) => new(field.Key, field.About, kind, field.Needed);
}
