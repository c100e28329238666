using System.Diagnostics.CodeAnalysis;
using Scriban;
using Scriban.Functions;
using Scriban.Parsing;
using Scriban.Runtime;

namespace Chandlery.Paper.Templates;

/// <summary>
/// The template library's own functions, each group made when a template asks for it. The library makes all of them at once by
/// looking through itself, which took a sixth of the time of one label; our templates use hardly any, a maker's own may use all.
/// </summary>
internal sealed class FunctionsWhenAsked : ScriptObject
{
    private static readonly Dictionary<string, Lazy<ScriptObject>> Groups = new(StringComparer.Ordinal)
    {
        ["array"] = new(() => new ArrayFunctions()),
        ["date"] = new(() => new DateTimeFunctions()),
        ["html"] = new(() => new HtmlFunctions()),
        ["math"] = new(() => new MathFunctions()),
        ["object"] = new(() => new ObjectFunctions()),
        ["regex"] = new(() => new RegexFunctions()),
        ["string"] = new(() => new StringFunctions()),
        ["timespan"] = new(() => new TimeSpanFunctions()),
    };

    /// <summary>The functions of one run. This type has none of its own for the library to look for, which it would do for each run.</summary>
    public FunctionsWhenAsked()
        : base(Groups.Count, autoImportStaticsFromThisType: false)
    {
        this["blank"] = EmptyScriptObject.Default;
        this["empty"] = EmptyScriptObject.Default;
        this["include"] = new IncludeFunction();
        this["include_join"] = new IncludeJoinFunction();
    }

    /// <inheritdoc/>
    public override bool Contains(string member) => Groups.ContainsKey(member) || base.Contains(member);

    /// <inheritdoc/>
    public override bool TryGetValue(TemplateContext? context, SourceSpan span, string member, [MaybeNullWhen(false)] out object value)
    {
        // A run of its own gets a copy: a template may write into a group.
        if (!base.Contains(member) && Groups.TryGetValue(member, out Lazy<ScriptObject>? group))
        {
            this[member] = group.Value.Clone(deep: true);
        }

        return base.TryGetValue(context, span, member, out value);
    }
}
