using System.Reflection;
using System.Text.RegularExpressions;
using Chandlery.Paper.Templates;

namespace Chandlery.Tests.Paper;

/// <summary>Members of a view record by the names that templates use.</summary>
internal static partial class ViewMembers
{
    /// <summary>The properties that carry a view's facts, in the order in which they are declared.</summary>
    public static IReadOnlyList<PropertyInfo> PropertiesOf(Type view) =>
        [
            .. view.GetProperties(BindingFlags.Instance | BindingFlags.Public)
                .Where(p => p.Name is not (nameof(ITemplateView.Template) or nameof(IView.Values)))
                .OrderBy(p => p.MetadataToken),
        ];

    public static IReadOnlyDictionary<string, Type> Of(Type view) =>
        PropertiesOf(view).ToDictionary(p => NameOf(p.Name), p => p.PropertyType);

    /// <summary>What templates call a member: words in small letters with underscores between them.</summary>
    public static string NameOf(string member) => Capital().Replace(member, "_$0").ToLowerInvariant();

    /// <summary>What a list holds; null for what is no list.</summary>
    public static Type? ElementOf(Type type) => type.IsGenericType ? type.GetGenericArguments()[0] : null;

    public static bool IsView(Type type) => typeof(IView).IsAssignableFrom(type);

    [GeneratedRegex("(?<!^)[A-Z]")]
    private static partial Regex Capital();
}
