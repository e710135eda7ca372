using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.Data;

/// <summary>One database with the sample firm for a class of tests.</summary>
public sealed class DatabaseFixture<TDatabase> : IAsyncLifetime
    where TDatabase : TestDatabase, new()
{
    public TDatabase Database { get; } = new();

    public Task InitializeAsync() => Database.StartWithSampleFirmAsync();

    public async Task DisposeAsync() => await Database.DisposeAsync();
}
