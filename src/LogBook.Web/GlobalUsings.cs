global using LogBook.Application.Accounts;
