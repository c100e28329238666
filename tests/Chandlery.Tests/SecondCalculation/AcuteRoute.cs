namespace Chandlery.Tests.SecondCalculation;

/// <summary>A route of acute toxicity.</summary>
/// <param name="Name">As in the code of the class.</param>
/// <param name="Statements">The statements that say this route.</param>
/// <param name="Forms">Its forms.</param>
/// <param name="Unsaid">The form that a class without a figure is taken to be about.</param>
internal sealed record AcuteRoute(string Name, string[] Statements, GivenForm[] Forms, GivenForm Unsaid)
{
    /// <summary>The three routes.</summary>
    public static readonly AcuteRoute[] All =
    [
        new("oral", ["H300", "H301", "H302", "H303"], [GivenForm.Oral], GivenForm.Oral),
        new("dermal", ["H310", "H311", "H312", "H313"], [GivenForm.Dermal], GivenForm.Dermal),
        new("inhalation", ["H330", "H331", "H332"], [GivenForm.Gas, GivenForm.Vapour, GivenForm.Dust], GivenForm.Vapour),
    ];
}
