using Chandlery.Core.SafetyFiles.Procedures;
using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Procedures;

/// <summary>How a maker looks after the safety of products, in one language.</summary>
/// <param name="Lang">Code of the language.</param>
/// <param name="Title">What it is.</param>
/// <param name="Maker">Who the maker is.</param>
/// <param name="Lines">What stands under the title.</param>
/// <param name="TaskHeads">Headings of the tasks: what, how, what is declared, clause.</param>
/// <param name="Tasks">What is done.</param>
/// <param name="RoleHeads">Headings of the roles: what for, name, who stands in.</param>
/// <param name="Roles">What somebody answers for.</param>
/// <param name="Force">Where it is signed.</param>
/// <param name="Again">Where it is noted that it was looked at again.</param>
internal sealed record ProcedureView(
    string Lang,
    string Title,
    string Maker,
    IReadOnlyList<string> Lines,
    IReadOnlyList<string> TaskHeads,
    IReadOnlyList<ProcedureTaskView> Tasks,
    IReadOnlyList<string> RoleHeads,
    IReadOnlyList<string> Roles,
    string Force,
    string Again
) : ITemplateView
{
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
        new(
            p.Language,
            p.Words["title"],
            p.Maker,
            p.Lines,
            [p.Words["headTask"], p.Words["headHow"], p.Words["headState"], p.Words["headClause"]],
            [.. p.Tasks.Select(t => new ProcedureTaskView(t.Name, t.How, t.State, t.Clause))],
            [p.Words["headRole"], p.Words["headName"], p.Words["headStandIn"]],
            p.Roles,
            p.Words["inForce"],
            p.Words["again"]
        );
}
