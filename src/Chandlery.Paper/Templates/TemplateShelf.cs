using System.Security;
using Chandlery.Yaml;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Chandlery.Paper.Templates;

/// <summary>
/// The Scriban templates of all documents. A template sees only the values it is given, already escaped for the markup;
/// it can include nothing, and loops, recursion and output are bounded.
/// </summary>
/// <param name="texts">Template texts by file name.</param>
public sealed class TemplateShelf(IReadOnlyDictionary<string, string> texts)
{
    private const int MostLoopSteps = 20_000;
    private const int DeepestRecursion = 20;
    private const int LongestOutput = 2_000_000;

    private readonly Dictionary<string, Template> parsed = [];
    private readonly Lock parsing = new();

    /// <summary>What a template writes for these values; null when there are problems.</summary>
    /// <param name="name">File name of the template.</param>
    /// <param name="values">Its values: texts, numbers, flags, and lists and groups of them.</param>
    /// <param name="problems">Collects mistakes with file, line and column.</param>
    public string? Write(string name, IReadOnlyDictionary<string, object?> values, Problems problems)
    {
        if (Parse(name, problems) is not { } template)
        {
            return null;
        }

        var context = new TemplateContext
        {
            StrictVariables = true,
            LoopLimit = MostLoopSteps,
            RecursiveLimit = DeepestRecursion,
            LimitToString = LongestOutput,
            EnableRelaxedMemberAccess = false,
            RegexTimeOut = TimeSpan.FromMilliseconds(200),
        };
        context.PushGlobal((ScriptObject)Guard(values)!);
        try
        {
            return template.Render(context);
        }
        catch (ScriptRuntimeException error)
        {
            SourceSpan span = error.Span;
            problems.Add(
                new TextPlace("templates/" + name, span.Start.Line + 1, span.Start.Column + 1),
                $"The template failed: {error.OriginalMessage}",
                $"Values it may use: {string.Join(", ", values.Keys)}."
            );
            return null;
        }
    }

    private Template? Parse(string name, Problems problems)
    {
        lock (parsing)
        {
            if (parsed.TryGetValue(name, out Template? known))
            {
                return known;
            }

            if (!texts.TryGetValue(name, out string? text))
            {
                problems.Add(
                    new TextPlace("templates/" + name, 0, 0),
                    "The template is missing.",
                    "Restore it from the program's own templates."
                );
                return null;
            }

            Template template = Template.Parse(text, "templates/" + name);
            if (template.HasErrors)
            {
                foreach (LogMessage message in template.Messages)
                {
                    problems.Add(
                        new TextPlace("templates/" + name, message.Span.Start.Line + 1, message.Span.Start.Column + 1),
                        $"The template cannot be read: {message.Message}",
                        "Check that every {{ has its }}, and every 'for' and 'if' its 'end'."
                    );
                }

                return null;
            }

            parsed[name] = template;
            return template;
        }
    }

    // Every text is escaped here once, so that no template can forget it.
    private static object? Guard(object? value) =>
        value switch
        {
            string text => SecurityElement.Escape(text),
            IReadOnlyDictionary<string, object?> group => GuardGroup(group),
            IEnumerable<object?> list => new ScriptArray(list.Select(Guard)),
            _ => value,
        };

    private static ScriptObject GuardGroup(IReadOnlyDictionary<string, object?> group)
    {
        var guarded = new ScriptObject();
        foreach ((string key, object? value) in group)
        {
            guarded[key] = Guard(value);
        }

        return guarded;
    }
}
