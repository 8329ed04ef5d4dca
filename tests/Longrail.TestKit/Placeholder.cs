namespace Longrail.TestKit;
