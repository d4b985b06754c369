global using Ashery.Accounts.Tests.Support;
global using Xunit;
