using LogBook.Application.Tests.Data;

// The test runner loads this program as a library; started by itself it is the child of the kill test.
return args is ["save-visits", var database, var seed] ? await SavingChild.RunAsync(database, int.Parse(seed, System.Globalization.CultureInfo.InvariantCulture)) : 2;
