using Chandlery.Core.Asked.Trials;
using Chandlery.Core.Declared;
using Chandlery.Core.Law;
using Chandlery.Core.Quantities;

namespace Chandlery.Cli.Commands;

/// <summary>What the command line says of the candle that a trial would become; what it leaves out, the trial says itself.</summary>
/// <param name="WaxId">The wax; null for each trial's own.</param>
/// <param name="Load">The load; null for each trial's own.</param>
/// <param name="AddingAt">The temperature at which the oil is added; null when not said.</param>
/// <param name="Places">The places of sale.</param>
internal sealed record TrialSetting(string? WaxId, FragranceLoad? Load, Celsius? AddingAt, IReadOnlyList<Place> Places)
{
    /// <summary>The question put to a trial; null with a problem when nobody says which wax or load is meant.</summary>
    public TrialQuestion? QuestionFor(Trial trial, KeptFolder folder)
    {
        Reference? named = WaxId is null ? trial.Wax : new Reference(WaxId, trial.Place);
        FragranceLoad? load = Load ?? trial.Load;
        if (named is null || load is null)
        {
            folder.Problems.Add(
                trial.Place,
                $"Trial '{trial.Id}' does not say in which {(named is null ? "wax" : "load")} it is meant, so it was not assessed.",
                "Add 'wax' and 'load' to it, or ask with --wax and --load."
            );
            return null;
        }

        return folder.Catalogue.Find<Wax>(named, folder.Problems) is { } wax
            ? new TrialQuestion(wax, load, Places) { AddingAt = AddingAt }
            : null;
    }
}
