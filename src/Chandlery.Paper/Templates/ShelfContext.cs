using Scriban;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Chandlery.Paper.Templates;

/// <summary>One run of a template: bounded, and with the shelf's parts, which are parsed once for all runs.</summary>
internal sealed class ShelfContext : TemplateContext
{
    private const int MostLoopSteps = 20_000;
    private const int DeepestRecursion = 20;
    private const int LongestOutput = 2_000_000;

    private readonly Func<string, Template?> parse;

    /// <summary>Sets up a run.</summary>
    /// <param name="parts">Finds parts by their names.</param>
    /// <param name="parse">The parsed part of a name; null when it cannot be parsed.</param>
    public ShelfContext(ITemplateLoader parts, Func<string, Template?> parse)
        : base(new FunctionsWhenAsked())
    {
        this.parse = parse;
        TemplateLoader = parts;
        StrictVariables = true;
        LoopLimit = MostLoopSteps;
        RecursiveLimit = DeepestRecursion;
        LimitToString = LongestOutput;
        EnableRelaxedMemberAccess = false;
        RegexTimeOut = TimeSpan.FromMilliseconds(200);
    }

    /// <inheritdoc/>
    protected override Template CreateTemplate(string templatePath, ScriptNode? callerContext) =>
        parse(templatePath)
        ?? throw new ScriptRuntimeException(callerContext?.Span ?? default, $"The part '{templatePath}' cannot be read.");
}
