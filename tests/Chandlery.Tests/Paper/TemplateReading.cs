using Scriban;
using Scriban.Syntax;

namespace Chandlery.Tests.Paper;

/// <summary>Follows a template through its syntax tree, every branch of it, and notes which members of which view it uses.</summary>
internal sealed class TemplateReading(IReadOnlyDictionary<string, string> texts)
{
    private readonly Stack<(string Template, Dictionary<string, Type?> Known)> scopes = [];
    private Type root = typeof(object);

    /// <summary>Members used.</summary>
    public HashSet<(Type View, string Member)> Used { get; } = [];

    /// <summary>Templates and parts read.</summary>
    public HashSet<string> Templates { get; } = [];

    /// <summary>What does not fit.</summary>
    public List<string> Wrong { get; } = [];

    /// <summary>Reads a template that is written from a view.</summary>
    public void Read(string template, Type view)
    {
        root = view;
        Enter(template, []);
    }

    private void Enter(string template, Dictionary<string, Type?> known)
    {
        Templates.Add(template);
        scopes.Push((template, known));
        Walk(Template.Parse(texts[template], template).Page!);
        scopes.Pop();
    }

    private void Walk(ScriptNode node)
    {
        switch (node)
        {
            case ScriptForStatement { Variable: ScriptVariable variable, Iterator: { } iterator } loop:
                Type? list = TypeOf(iterator);
                if (list is not null && ViewMembers.ElementOf(list) is null)
                {
                    Complain(iterator, $"'{iterator}' is no list");
                }

                scopes.Peek().Known[variable.Name] = list is null ? null : ViewMembers.ElementOf(list);
                Walk(loop.Body!);
                scopes.Peek().Known.Remove(variable.Name);
                break;
            case ScriptAssignExpression { Target: ScriptVariable { } own, Value: { } value }:
                TypeOf(value);
                scopes.Peek().Known[own.Name] = null;
                break;
            case ScriptFunctionCall { Target: ScriptVariable { Name: "include" } } include:
                var arguments = new Dictionary<string, Type?>(scopes.Peek().Known);
                for (int i = 1; i < include.Arguments.Count; i++)
                {
                    arguments[$"{i}"] = TypeOf(include.Arguments[i]);
                }

                Enter((string)((ScriptLiteral)include.Arguments[0]).Value!, arguments);
                break;
            case ScriptExpression expression:
                TypeOf(expression);
                break;
            default:
                for (int i = 0; i < node.ChildrenCount; i++)
                {
                    if (node.GetChildren(i) is { } child)
                    {
                        Walk(child);
                    }
                }

                break;
        }
    }

    // Null for what has no type of ours: literals, comparisons.
    private Type? TypeOf(ScriptExpression expression)
    {
        switch (expression)
        {
            case ScriptVariable variable:
                return scopes.Peek().Known.TryGetValue(variable.Name, out Type? known) ? known : Member(root, variable.Name, expression);
            // An argument of a part, such as $1.
            case ScriptIndexerExpression { Target: ScriptVariable { Name: "$" }, Index: ScriptLiteral number }:
                return scopes.Peek().Known.GetValueOrDefault($"{number.Value}");
            case ScriptIndexerExpression { Target: { } list }:
                return TypeOf(list) is { } type ? ViewMembers.ElementOf(type) : null;
            case ScriptMemberExpression { Target: { } target, Member: { } member }:
                if (TypeOf(target) is not { } owner || (member.Name == "size" && ViewMembers.ElementOf(owner) is not null))
                {
                    return null;
                }

                return Member(owner, member.Name, target);
            default:
                for (int i = 0; i < expression.ChildrenCount; i++)
                {
                    if (expression.GetChildren(i) is { } child)
                    {
                        Walk(child);
                    }
                }

                return null;
        }
    }

    private Type? Member(Type owner, string name, ScriptNode at)
    {
        if (!ViewMembers.IsView(owner))
        {
            Complain(at, $"'{at}' has no members");
            return null;
        }

        if (!ViewMembers.Of(owner).TryGetValue(name, out Type? type))
        {
            Complain(at, $"{owner.Name} has no '{name}'");
            return null;
        }

        Used.Add((owner, name));
        return type;
    }

    private void Complain(ScriptNode at, string what) => Wrong.Add($"{scopes.Peek().Template}:{at.Span.Start.Line + 1}: {what}");
}
