global using Ashery.Web.Tests.Support;
global using Microsoft.Playwright;
global using Xunit;
global using static Microsoft.Playwright.Assertions;

[assembly: AssemblyFixture(typeof(TheBrowser))]
