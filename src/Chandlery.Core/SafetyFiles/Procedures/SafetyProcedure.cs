namespace Chandlery.Core.SafetyFiles.Procedures;

/// <summary>How a maker looks after the safety of products: one page, in one language.</summary>
/// <param name="Language">Code of its language.</param>
/// <param name="Words">Its words by key.</param>
/// <param name="Maker">Who the maker is, on one line.</param>
/// <param name="Lines">What stands under the title.</param>
/// <param name="Tasks">What is done, in the order of the work.</param>
/// <param name="Roles">What somebody must answer for by name.</param>
public sealed record SafetyProcedure(
    string Language,
    IReadOnlyDictionary<string, string> Words,
    string Maker,
    IReadOnlyList<string> Lines,
    IReadOnlyList<ProcedureTask> Tasks,
    IReadOnlyList<string> Roles
);
