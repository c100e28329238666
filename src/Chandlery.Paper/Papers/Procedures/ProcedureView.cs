using Chandlery.Core.SafetyFiles.Procedures;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Procedures;

/// <summary>How a maker looks after the safety of products, in one language.</summary>
internal sealed record ProcedureView : ITemplateView
{
    /// <summary>Code of the language.</summary>
    public required string Lang { get; init; }

    /// <summary>What it is.</summary>
    public required string Title { get; init; }

    /// <summary>Who the maker is.</summary>
    public required string Maker { get; init; }

    /// <summary>What stands under the title.</summary>
    public required IReadOnlyList<string> Lines { get; init; }

    /// <summary>Headings of the tasks: what, how, what is declared, clause.</summary>
    public required IReadOnlyList<string> TaskHeads { get; init; }

    /// <summary>What is done.</summary>
    public required IReadOnlyList<ProcedureTaskView> Tasks { get; init; }

    /// <summary>Headings of the roles: what for, name, who stands in.</summary>
    public required IReadOnlyList<string> RoleHeads { get; init; }

    /// <summary>What somebody answers for.</summary>
    public required IReadOnlyList<string> Roles { get; init; }

    /// <summary>Where it is signed.</summary>
    public required string Force { get; init; }

    /// <summary>Where it is noted that it was looked at again.</summary>
    public required string Again { get; init; }

    /// <inheritdoc/>
    public string Template => "procedure.sbn";

    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values =>
        [
            ("lang", Lang),
            ("title", Title),
            ("maker", Maker),
            ("lines", Lines),
            ("task_heads", TaskHeads),
            ("tasks", Tasks),
            ("role_heads", RoleHeads),
            ("roles", Roles),
            ("force", Force),
            ("again", Again),
        ];

    /// <summary>The view of a procedure.</summary>
    public static ProcedureView Of(SafetyProcedure p) =>
        new()
        {
            Lang = p.Language,
            Title = p.Words["title"],
            Maker = p.Maker,
            Lines = p.Lines,
            TaskHeads = [p.Words["headTask"], p.Words["headHow"], p.Words["headState"], p.Words["headClause"]],
            Tasks = [.. p.Tasks.Select(t => new ProcedureTaskView(t.Name, t.How, t.State, t.Clause))],
            RoleHeads = [p.Words["headRole"], p.Words["headName"], p.Words["headStandIn"]],
            Roles = p.Roles,
            Force = p.Words["inForce"],
            Again = p.Words["again"],
        };
}
