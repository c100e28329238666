using System.Reflection;
using System.Runtime.CompilerServices;
using Chandlery.Files;
using Chandlery.Paper.Templates;
using Chandlery.Yaml;

namespace Chandlery.Tests.Paper;

/// <summary>Templates and the records they are written from fit each other, whatever branch a candle takes.</summary>
public class ViewTests
{
    private static readonly IReadOnlyDictionary<string, string> Texts = ShippedFiles.Templates(null, new Problems());

    private static readonly IReadOnlyList<Type> Views =
    [
        .. typeof(ITemplateView).Assembly.GetTypes().Where(t => typeof(IView).IsAssignableFrom(t) && !t.IsInterface),
    ];

    public static TheoryData<string> TemplateViews => [.. Views.Where(v => typeof(ITemplateView).IsAssignableFrom(v)).Select(v => v.Name)];

    public static TheoryData<string> AllViews => [.. Views.Select(v => v.Name)];

    private static Type View(string name) => Views.Single(v => v.Name == name);

    // One template, or those of all designs for the view that they share.
    private static IEnumerable<string> TemplatesOf(Type view) =>
        ((ITemplateView)RuntimeHelpers.GetUninitializedObject(view)).Template is { } one
            ? [one]
            : Texts.Keys.Where(t => t.StartsWith("designs/", StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(TemplateViews))]
    public void ATemplateUsesWhatItsViewHasAndAllOfIt(string name)
    {
        Type view = View(name);
        var reading = new TemplateReading(Texts);
        foreach (string template in TemplatesOf(view))
        {
            reading.Read(template, view);
        }

        Assert.Empty(reading.Wrong);
        Assert.Equal(ViewMembers.Of(view).Keys.Order(), reading.Used.Where(u => u.View == view).Select(u => u.Member).Order());
    }

    // Some templates print only a part of a view that several share: together they use all of it.
    [Fact]
    public void TogetherTheTemplatesUseEveryMemberAndEveryPart()
    {
        var used = new HashSet<(Type, string)>();
        var parts = new HashSet<string>();
        foreach (Type view in Views.Where(v => typeof(ITemplateView).IsAssignableFrom(v)))
        {
            var reading = new TemplateReading(Texts);
            foreach (string template in TemplatesOf(view))
            {
                reading.Read(template, view);
            }

            used.UnionWith(reading.Used);
            parts.UnionWith(reading.Templates);
        }

        Assert.Equal(
            Views.SelectMany(v => ViewMembers.Of(v).Keys.Select(m => $"{v.Name}.{m}")).Order(),
            used.Select(u => $"{u.Item1.Name}.{u.Item2}").Order()
        );
        Assert.Equal(Texts.Keys.Order(), parts.Order());
    }

    [Theory]
    [MemberData(nameof(AllViews))]
    public void AViewNamesEachOfItsMembersOnceWithItsOwnValue(string name)
    {
        Type type = View(name);
        IReadOnlyList<PropertyInfo> properties = ViewMembers.PropertiesOf(type);
        var view = (IView)RuntimeHelpers.GetUninitializedObject(type);
        foreach ((int number, PropertyInfo property) in properties.Index())
        {
            property.SetValue(view, Sample(property.PropertyType, number));
        }

        List<(string Name, object? Value)> expected = [.. properties.Select(p => (ViewMembers.NameOf(p.Name), p.GetValue(view)))];
        Assert.Equal(expected, view.Values);
    }

    // Values that differ from each other, so that two members cannot be mistaken.
    private static object? Sample(Type type, int number) =>
        type == typeof(string) ? $"value {number}"
        : type == typeof(int) ? number
        : type == typeof(double) ? (double)number
        : type.IsInterface ? Array.CreateInstance(type.GetGenericArguments()[0], number)
        : RuntimeHelpers.GetUninitializedObject(type);

    [Theory]
    [InlineData("{{ nmae }}", "LabelView has no 'nmae'")]
    [InlineData("{{ maker.nmae }}", "MakerView has no 'nmae'")]
    [InlineData("{{ if false }}{{ for t in texts }}{{ t.nmae }}{{ end }}{{ end }}", "LabelTextView has no 'nmae'")]
    [InlineData("{{ include 'parts/messages.sbn' safety 1 8 }}", "LabelSymbolView has no 'text'")]
    [InlineData("{{ for t in name }}{{ end }}", "'name' is no list")]
    [InlineData("{{ name.first }}", "'name' has no members")]
    public void AMistakeInATemplateWouldBeFound(string template, string expected)
    {
        var reading = new TemplateReading(Texts.Append(new("bent.sbn", template)).ToDictionary());
        reading.Read("bent.sbn", View("LabelView"));
        Assert.Contains(expected, Assert.Single(reading.Wrong), StringComparison.Ordinal);
    }
}
