using Scriban;
using Scriban.Parsing;
using Scriban.Runtime;
using Scriban.Syntax;

namespace Chandlery.Paper.Templates;

/// <summary>Finds the parts that templates may include: a closed set of names, never files.</summary>
/// <param name="parts">Texts by name, such as "parts/messages.sbn".</param>
internal sealed class PartLoader(IReadOnlyDictionary<string, string> parts) : ITemplateLoader
{
    /// <inheritdoc/>
    public string GetPath(TemplateContext context, SourceSpan callerSpan, string templateName) =>
        parts.ContainsKey(templateName)
            ? templateName
            : throw new ScriptRuntimeException(
                callerSpan,
                $"There is no part '{templateName}' to include. Parts: {string.Join(", ", parts.Keys.Order(StringComparer.Ordinal))}."
            );

    /// <inheritdoc/>
    public string Load(TemplateContext context, SourceSpan callerSpan, string templatePath) => parts[templatePath];

    /// <inheritdoc/>
    public ValueTask<string?> LoadAsync(TemplateContext context, SourceSpan callerSpan, string templatePath) =>
        ValueTask.FromResult<string?>(parts[templatePath]);
}
