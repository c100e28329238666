namespace Chandlery.Tests.Support;

/// <summary>Tests that share the one PostgreSQL server: it is started for the first and stopped after the last.</summary>
[CollectionDefinition(Name)]
public sealed class OnPostgres : ICollectionFixture<PostgresServer>
{
    public const string Name = "postgres";
}
