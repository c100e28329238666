namespace Chandlery.Workbench.Answers;

/// <summary>Trials, assessed.</summary>
/// <param name="Trials">Each of them.</param>
internal sealed record NotebookAnswer(IReadOnlyList<TrialNote> Trials);
