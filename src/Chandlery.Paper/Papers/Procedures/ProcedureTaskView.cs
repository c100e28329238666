using Chandlery.Paper.Templates;

namespace Chandlery.Paper.Papers.Procedures;

/// <summary>One thing that a maker does.</summary>
/// <param name="Name">What it is.</param>
/// <param name="How">How it is done.</param>
/// <param name="State">What the declarations show of it; empty for nothing.</param>
/// <param name="Clause">Where the law asks for it; empty where no rule is known.</param>
internal sealed record ProcedureTaskView(string Name, string How, string State, string Clause) : IView
{
    /// <inheritdoc/>
    public IEnumerable<(string Name, object? Value)> Values => [("name", Name), ("how", How), ("state", State), ("clause", Clause)];
}
