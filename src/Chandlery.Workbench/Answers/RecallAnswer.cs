using Chandlery.Core.SafetyFiles.Recalls;

namespace Chandlery.Workbench.Answers;

/// <summary>Who has what.</summary>
/// <param name="Recall">The batches, and whom they went to.</param>
/// <param name="Languages">Languages in which the danger must be said, English last.</param>
internal sealed record RecallAnswer(RecallReport Recall, IReadOnlyList<PaperLanguage> Languages);
