using System.Collections;
using Chandlery.Core.Declared;
using Chandlery.Files;
using Chandlery.Tests.Support;

namespace Chandlery.Tests.Declared;

/// <summary>A reference that is forgotten lets a needed file be put away, or leads nowhere once its file is called otherwise.</summary>
public class ReferencesTests
{
    private static readonly Catalogue Demo = DeclarationFolder.Open(TestLaw.DemoFolder, TestLaw.Lawbook.Vocabulary).Catalogue;

    [Fact]
    public void Whatever_a_declaration_of_the_demo_holds_as_a_reference_is_told()
    {
        var forgotten = new List<string>();
        int kinds = 0;
        foreach (IGrouping<Type, IDeclaration> kind in Demo.All.GroupBy(d => d.GetType()))
        {
            bool any = false;
            foreach (IDeclaration declared in kind)
            {
                var told = References.Of(declared).Select(r => r.To).ToHashSet();
                List<Reference> held = [.. Held(declared).Except(declared is Candle { Kind: { } product } ? [product] : [])];
                any |= held.Count > 0;
                forgotten.AddRange(
                    held.Where(r => !told.Contains(r) && !IsNoFile(declared)).Select(r => $"{kind.Key.Name} {declared.Id}: {r.Id}")
                );
            }

            kinds += any ? 1 : 0;
        }

        Assert.Empty(forgotten);
        Assert.True(kinds >= 9, $"the demo has references in {kinds} kinds only");
    }

    [Fact]
    public void Each_leads_to_a_file_of_the_kind_that_is_told() =>
        Assert.Empty(
            Demo.All.SelectMany(d => References.Of(d))
                .Where(r => !Demo.All.Any(d => d.Id == r.To.Id && d.GetType() == r.Kind))
                .Select(r => $"{r.To.Place}: {r.To.Id}")
        );

    // Wicks and packaging are bought by kind; nobody declares them.
    private static bool IsNoFile(IDeclaration declared) => declared is Lot { Content: LotContent.Wick or LotContent.Packaging };

    private static IEnumerable<Reference> Held(object? value) =>
        value switch
        {
            null or string => [],
            Reference reference => [reference],
            IEnumerable many => many.Cast<object?>().SelectMany(Held),
            _ when value.GetType().Namespace?.StartsWith("Chandlery.Core.Declared", StringComparison.Ordinal) == true => value
                .GetType()
                .GetProperties()
                .Where(p => p.GetIndexParameters().Length == 0 && p.GetMethod is { IsStatic: false })
                .SelectMany(p => Held(p.GetValue(value))),
            _ => [],
        };
}
