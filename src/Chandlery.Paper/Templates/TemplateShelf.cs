using System.Security;
using Chandlery.Yaml;
using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Chandlery.Paper.Templates;

/// <summary>
/// The Scriban templates of all documents. A template sees only its view, already escaped for the markup; it can include only
/// the shelf's own parts, and loops, recursion, output and time are bounded.
/// </summary>
public sealed class TemplateShelf
{
    private const string Home = "templates/";

    // A page takes milliseconds; a template that calls itself again and again in its depth would take days.
    private static readonly TimeSpan LongestRun = TimeSpan.FromSeconds(5);

    /// <summary>Where the names of parts begin.</summary>
    private const string PartsFolder = "parts/";

    private readonly IReadOnlyDictionary<string, string> texts;
    private readonly PartLoader parts;
    private readonly Dictionary<string, Template> parsed = [];
    private readonly Lock parsing = new();

    /// <summary>Puts templates on the shelf.</summary>
    /// <param name="texts">Texts by relative path; those under "parts/" are parts that the others may include.</param>
    public TemplateShelf(IReadOnlyDictionary<string, string> texts)
    {
        this.texts = texts;
        parts = new PartLoader(
            texts.Where(t => t.Key.StartsWith(PartsFolder, StringComparison.Ordinal)).ToDictionary(t => t.Key, t => t.Value)
        );
    }

    /// <summary>Names of all templates.</summary>
    public IEnumerable<string> Names => texts.Keys;

    /// <summary>The remark at the head of a template; empty for none.</summary>
    public string FirstRemark(string template)
    {
        string text = texts.GetValueOrDefault(template, "");
        int start = text.IndexOf('#', StringComparison.Ordinal) + 1;
        int end = text.IndexOf("}}", StringComparison.Ordinal);
        return text.StartsWith("{{", StringComparison.Ordinal) && start > 0 && end > start ? text[start..end].Trim(' ', '-') : "";
    }

    /// <summary>What a template writes for a view; null when there are problems.</summary>
    /// <param name="view">What the template may use.</param>
    /// <param name="problems">Collects mistakes with file, line and column.</param>
    public string? Write(ITemplateView view, Problems problems)
    {
        if (Parse(view.Template, problems) is not { } template)
        {
            return null;
        }

        int before = problems.Found.Count;
        using var stop = new CancellationTokenSource(LongestRun);
        var context = new ShelfContext(parts, part => Parse(part, problems)) { CancellationToken = stop.Token };
        context.PushGlobal(GuardView(view));
        try
        {
            return template.Render(context);
        }
        catch (ScriptAbortException error)
        {
            problems.Add(
                PlaceOf(error.Span),
                $"The template was stopped after {LongestRun.TotalSeconds} s.",
                "Let no function call itself more than once on its way."
            );
            return null;
        }
        catch (ScriptRuntimeException error)
        {
            // A part that cannot be parsed has already said so, at its own place.
            if (problems.Found.Count == before)
            {
                problems.Add(
                    PlaceOf(error.Span),
                    $"The template failed: {error.OriginalMessage}",
                    $"Values it may use: {string.Join(", ", view.Values.Select(v => v.Name))}."
                );
            }

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
                problems.Add(new TextPlace(Home + name, 0, 0), "The template is missing.", "Restore it from the program's own templates.");
                return null;
            }

            Template template = Template.Parse(text, Home + name);
            if (template.HasErrors)
            {
                foreach (LogMessage message in template.Messages)
                {
                    problems.Add(
                        PlaceOf(message.Span),
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

    private static TextPlace PlaceOf(SourceSpan span) => new(span.FileName, span.Start.Line + 1, span.Start.Column + 1);

    // Every text is escaped here once, so that no template can forget it. Anything else that a template could reach into is refused.
    private static object? Guard(object? value) =>
        value switch
        {
            null or bool or int or double => value,
            string text => SecurityElement.Escape(text),
            IView view => GuardView(view),
            IEnumerable<object?> list => new ScriptArray(list.Select(Guard)),
            _ => throw new ArgumentException($"a template can make nothing of a {value.GetType().Name}"),
        };

    private static ScriptObject GuardView(IView view)
    {
        var guarded = new ScriptObject();
        foreach ((string name, object? value) in view.Values)
        {
            guarded[name] = Guard(value);
        }

        return guarded;
    }
}
