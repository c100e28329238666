using System.Reflection;
using Xunit.Sdk;

namespace Chandlery.Tests.Law.Cases;

/// <summary>Feeds a test with the cases beside the law's rows, one result for each.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class LawCasesAttribute : DataAttribute
{
    /// <inheritdoc/>
    public override IEnumerable<object[]> GetData(MethodInfo testMethod) => CaseFiles.Cases.Select(c => new object[] { c.Name }).Distinct();
}
