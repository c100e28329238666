using Chandlery.Tests.Support;

namespace Chandlery.Tests.Files;

/// <summary>The same in a database that benches share.</summary>
[Collection(OnPostgres.Name)]
public sealed class PostgresRegisterTruthTests(PostgresServer server) : RegisterTruthTests(new PostgresTestStore(server));
