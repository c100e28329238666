using Chandlery.Core.Judged;
using Chandlery.Core.Labelled;
using Chandlery.Core.Quantities;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Law.Cases;

/// <summary>What the program makes of a case.</summary>
internal sealed class CaseAnswer(LawCase asked)
{
    /// <summary>Classes, label and open questions.</summary>
    public Verdict Verdict { get; } =
        TestLaw
            .Law(TestLaw.Lawbook.Edition(asked.Name.Edition), asked.On, asked.OnMarketSince)
            .Judge(TestLaw.MixtureLeaving(asked.UndeclaredPercent, [.. asked.Given]));

    /// <summary>Codes of the statements that may go from the label of a package.</summary>
    public IEnumerable<string> MayLeaveOff(double millilitres) =>
        SmallPackages
            .MayLeaveOff(Verdict.Law.Edition, Verdict.Classification, Verdict.Label, new Millilitres(millilitres))
            .Select(s => s.Text);
}
