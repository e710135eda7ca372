global using LogBook.Application.Accounts;
global using Xunit;
