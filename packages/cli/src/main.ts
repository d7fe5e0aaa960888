console.log('undercroft');
